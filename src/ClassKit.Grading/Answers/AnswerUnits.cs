using System.Collections.Concurrent;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Answers;

/// <summary>Units that students write behind a typed number, and what they make of it in the unit asked for.</summary>
/// <remarks>
/// Factors are those of the spreadsheet function CONVERT (ECMA-376 Part 1, 18.17.7.48), so that a cell and a typed unit cannot disagree.
/// </remarks>
public static class AnswerUnits
{
    /// <summary>What the function calls each unit. Masses and volumes never mix: that would need a density.</summary>
    private static readonly Dictionary<string, string> Codes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["mg"] = "mg",
        ["g"] = "g",
        ["gr"] = "g",
        ["gram"] = "g",
        ["grams"] = "g",
        ["kg"] = "kg",
        ["oz"] = "ozm",
        ["lb"] = "lbm",
        ["lbs"] = "lbm",
        ["ml"] = "ml",
        ["cl"] = "cl",
        ["dl"] = "dl",
        ["l"] = "l",
        ["litre"] = "l",
        ["litres"] = "l",
        ["liter"] = "l",
        ["liters"] = "l",
        ["tsp"] = "tsp",
        ["tbsp"] = "tbs",
        ["cup"] = "cup",
        ["cups"] = "cup",
        ["s"] = "sec",
        ["min"] = "mn",
        ["h"] = "hr",
        ["°C"] = "C",
        ["C"] = "C",
        ["deg C"] = "C",
        ["Celsius"] = "C",
        ["°F"] = "F",
        ["F"] = "F",
        ["deg F"] = "F",
        ["Fahrenheit"] = "F",
        ["K"] = "K",
        ["grammes"] = "g",
        ["kilo"] = "kg",
        ["kilos"] = "kg",
        ["kilogram"] = "kg",
        ["kilograms"] = "kg",
        ["ounce"] = "ozm",
        ["ounces"] = "ozm",
        ["pound"] = "lbm",
        ["pounds"] = "lbm",
    };

    private static readonly string[] Hundredths = ["¢", "cents", "cent", "ct"];

    /// <summary>The units that students take for one another, as they are written.</summary>
    private static readonly string[][] Confused =
    [
        ["kg", "g", "mg", "lb", "oz"],
        ["l", "dl", "cl", "ml", "cups", "tbsp", "tsp"],
        ["h", "min", "s"],
        ["°C", "°F", "K"],
    ];

    private static readonly ConcurrentDictionary<string, IReadOnlyList<UnitConversion>> KnownOf = new(StringComparer.Ordinal);

    private static readonly ConcurrentDictionary<string, UnitConversion?> Conversions = new(StringComparer.Ordinal);

    private static readonly CellFormula Conversion = CellFormula.Of("=CONVERT(number,from,to)");

    /// <summary>
    /// A typed number with what is written behind it, as a number of the unit asked for; unknown words leave it as it is.
    /// </summary>
    internal static double Convert(double number, string written, string asked) => Into(written, asked)?.Of(number) ?? number;

    /// <summary>
    /// What makes a number of the unit asked for out of one with something written behind it; null where that is no unit of the kind.
    /// </summary>
    internal static UnitConversion? Into(string written, string asked)
    {
        var words = written.Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        // "kg flour" and "per cent of all": the unit stands first, and the longest that is known counts.
        for (var count = words.Length; count > 0; count--)
        {
            if (Factor(Bare(string.Join(' ', words[..count])), asked) is { } unit)
                return unit;
        }
        return null;
    }

    private static UnitConversion? Factor(string written, string asked)
    {
        if (written.StartsWith('%') || Percents.Contains(written, StringComparer.OrdinalIgnoreCase))
            return new(written, 0.01, 0);
        if (written.StartsWith('‰'))
            return new(written, 0.001, 0);
        if (AnswerUnit.IsMoney(asked))
            return Known(asked).FirstOrDefault(unit => string.Equals(unit.Written, written, StringComparison.OrdinalIgnoreCase));
        return Codes.TryGetValue(written, out var from) && Codes.TryGetValue(Bare(asked), out var to) ? Between(from, to) : null;
    }

    private static readonly string[] Percents = ["percent", "per cent", "pct"];

    /// <summary>
    /// Every unit that may be written behind a number where <paramref name="asked"/> is asked for, with what it makes of the number.
    /// </summary>
    /// <returns>None for a unit that we do not know, such as rolls: whatever is written there, the number stays as it is.</returns>
    public static IReadOnlyList<UnitConversion> Known(string asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return KnownOf.GetOrAdd(asked, FindKnown);
    }

    private static IReadOnlyList<UnitConversion> FindKnown(string asked)
    {
        if (AnswerUnit.IsMoney(asked))
            return [.. Hundredths.Select(name => new UnitConversion(name, 0.01, 0))];
        if (!Codes.TryGetValue(Bare(asked), out var to))
            return [];
        return
        [
            .. Codes
                .Where(unit => unit.Value != to)
                .Select(unit => Between(unit.Value, to) is { } conversion ? conversion with { Written = unit.Key } : null)
                .OfType<UnitConversion>(),
        ];
    }

    /// <summary>What a number in the unit of one code is in that of another; null where they measure different things.</summary>
    private static UnitConversion? Between(string from, string to) => Conversions.GetOrAdd($"{from} {to}", _ => from == to ? new(from, 1, 0)
            : Converted(0, from, to) is { } offset && Converted(1, from, to) is { } one ? new(from, one - offset, offset)
            : null);

    /// <summary>The other units of the same kind, as they are written; none for a unit that we do not know.</summary>
    internal static IEnumerable<string> Others(string asked) =>
        !Codes.TryGetValue(Bare(asked), out var code)
            ? []
            : Confused.Where(kind => kind.Any(unit => Codes[unit] == code)).SelectMany(kind => kind.Where(unit => Codes[unit] != code));

    private static double? Converted(double number, string from, string to) =>
        NamedEvaluation
            .Evaluate(
                Conversion,
                new Dictionary<string, CellValue>
                {
                    ["number"] = CellValue.FromNumber(number),
                    ["from"] = CellValue.FromText(from),
                    ["to"] = CellValue.FromText(to),
                }
            )
            .Value
            is { IsNumber: true, Number: var converted }
            ? converted
            : null;

    private static string Bare(string unit) => unit.Trim(' ', '.', ',', ';', '!', '(', ')', '[', ']');
}
