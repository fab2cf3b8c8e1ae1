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
public static class WrittenUnits
{
    private static readonly IReadOnlyList<UnitConversion> OfMoney =
    [
        .. ((string[])["¢", "cents", "cent", "ct"]).Select(name => new UnitConversion(name, 0.01, 0)),
    ];

    /// <summary>The units that students take for one another, as they are told of them.</summary>
    private static readonly Unit[][] Confused =
    [
        ["kg", "g", "mg", "lb", "oz"],
        ["l", "dl", "cl", "ml", "cups", "tbsp", "tsp"],
        ["h", "min", "s"],
        ["°C", "°F", "K"],
    ];

    private static readonly ConcurrentDictionary<string, IReadOnlyList<UnitConversion>> KnownOf = new(StringComparer.Ordinal);

    private static readonly ConcurrentDictionary<(string From, string To), UnitConversion?> Conversions = new();

    private static readonly ConcurrentDictionary<string, IReadOnlyList<(Unit, UnitConversion)>> OthersOf = new(StringComparer.Ordinal);

    private static readonly CellFormula Conversion = CellFormula.Of("=CONVERT(number,from,to)");

    /// <summary>
    /// A typed number with what is written behind it, as a number of the unit asked for; unknown words leave it as it is.
    /// </summary>
    internal static double Convert(double number, string written, Unit asked) => Into(written, asked)?.Of(number) ?? number;

    /// <summary>
    /// What makes a number of the unit asked for out of one with something written behind it; null where that is no unit of the kind.
    /// </summary>
    internal static UnitConversion? Into(string written, Unit asked)
    {
        var words = written.Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        // "kg flour" and "per cent of all": the unit stands first, and the longest that is known counts.
        for (var count = words.Length; count > 0; count--)
        {
            if (Factor(KnownUnits.Bare(string.Join(' ', words[..count])), asked) is { } unit)
                return unit;
        }
        return null;
    }

    private static UnitConversion? Factor(string written, Unit asked)
    {
        if (written.StartsWith('%') || Percents.Contains(written, StringComparer.OrdinalIgnoreCase))
            return new(written, 0.01, 0);
        if (written.StartsWith('‰'))
            return new(written, 0.001, 0);
        if (asked.IsMoney)
            return Known(asked).FirstOrDefault(unit => string.Equals(unit.Written, written, StringComparison.OrdinalIgnoreCase));
        return asked.Code is { } to && Unit.Of(written).Code is { } from ? Between(from, to) : null;
    }

    private static readonly string[] Percents = ["percent", "per cent", "pct"];

    /// <summary>
    /// Every unit that may be written behind a number where <paramref name="asked"/> is asked for, with what it makes of the number.
    /// </summary>
    /// <returns>None for a unit that we do not know, such as rolls: whatever is written there, the number stays as it is.</returns>
    public static IReadOnlyList<UnitConversion> Known(Unit asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return asked.IsMoney ? OfMoney
            : asked.Code is { } code ? KnownOf.GetOrAdd(code, FindKnown)
            : [];
    }

    private static IReadOnlyList<UnitConversion> FindKnown(string to) =>
        [
            .. KnownUnits
                .Convertible.Where(unit => unit.Code != to)
                .Select(unit => Between(unit.Code, to) is { } conversion ? conversion with { Written = unit.Written } : null)
                .OfType<UnitConversion>(),
        ];

    /// <summary>What a number in the unit of one code is in that of another; null where they measure different things.</summary>
    private static UnitConversion? Between(string from, string to) => Conversions.GetOrAdd((from, to), _ => from == to ? new(from, 1, 0)
            : Converted(0, from, to) is { } offset && Converted(1, from, to) is { } one ? new(from, one - offset, offset)
            : null);

    /// <summary>
    /// The other units of the same kind, each with what it makes of a number in the unit asked for; none for a unit that we do not know.
    /// </summary>
    internal static IReadOnlyList<(Unit Unit, UnitConversion Into)> Others(Unit asked) =>
        asked.Code is { } code ? OthersOf.GetOrAdd(code, FindOthers) : [];

    private static IReadOnlyList<(Unit, UnitConversion)> FindOthers(string code) =>
        [
            .. Confused
                .Where(kind => kind.Any(unit => unit.Code == code))
                .SelectMany(kind => kind.Where(unit => unit.Code != code))
                .Select(unit => (unit, Between(unit.Code!, code)!)),
        ];

    /// <summary>What a number in one unit is in another; null where we do not know one of them, or they measure different things.</summary>
    internal static UnitConversion? Between(Unit from, Unit to) =>
        from.Code is { } one && to.Code is { } other ? Between(one, other) : null;

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
}
