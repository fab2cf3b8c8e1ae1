using ClassKit.CellFormulas;

namespace ClassKit.Grading;

/// <summary>Units that students write behind a typed number, and what they make of it in the unit asked for.</summary>
/// <remarks>Factors are those of the spreadsheet function CONVERT (ECMA-376 Part 1, 18.17.7.48), so that a cell and a typed unit cannot disagree.</remarks>
internal static class AnswerUnits
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
    };

    /// <summary>The units that students take for one another, as they are written.</summary>
    private static readonly string[][] Confused = [["kg", "g", "mg", "lb", "oz"], ["l", "dl", "cl", "ml", "cups", "tbsp", "tsp"], ["h", "min", "s"], ["°C", "°F", "K"]];

    private static readonly CellFormula Conversion = CellFormula.Of("=CONVERT(number,from,to)");

    /// <summary>A typed number with the unit behind it, as a number of the unit asked for; unknown words leave it as it is.</summary>
    public static double Convert(double number, string written, string asked)
    {
        if (written is "%" or "percent" or "per cent") return number / 100;
        if (!Codes.TryGetValue(Bare(written), out var from) || !Codes.TryGetValue(Bare(asked), out var to) || from == to) return number;
        var result = NamedEvaluation.Evaluate(Conversion, new Dictionary<string, CellValue>
        {
            ["number"] = CellValue.FromNumber(number),
            ["from"] = CellValue.FromText(from),
            ["to"] = CellValue.FromText(to),
        }).Value;
        // Units of another kind, such as litres where grams are asked.
        return result.IsNumber ? result.Number : number;
    }

    /// <summary>The other units of the same kind, as they are written; none for a unit that we do not know.</summary>
    public static IEnumerable<string> Others(string asked) =>
        !Codes.TryGetValue(Bare(asked), out var code) ? []
        : Confused.Where(kind => kind.Any(unit => Codes[unit] == code)).SelectMany(kind => kind.Where(unit => Codes[unit] != code));

    private static string Bare(string unit) => unit.Trim().TrimEnd('.');
}
