using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>Notes units written as words where their signs are meant: what a student writes is compared with the sign.</summary>
internal static class UnitWords
{
    private static readonly (string Sign, string[] Words)[] Signs =
    [
        ("g", ["gram", "grams", "gr"]),
        ("kg", ["kilogram", "kilograms", "kilo", "kilos"]),
        ("oz", ["ounce", "ounces"]),
        ("lb", ["pound", "pounds", "lbs"]),
        ("L", ["litre", "litres", "liter", "liters"]),
        ("mL", ["millilitre", "millilitres", "milliliter", "milliliters"]),
        ("%", ["percent", "per cent"]),
        ("°C", ["celsius", "C"]),
        ("°F", ["fahrenheit", "F"]),
        ("min", ["minute", "minutes"]),
    ];

    private static readonly string[] Counts = ["piece", "pieces", "pc", "pcs", "each", "units"];

    /// <summary>
    /// The same of a given, whose unit stands behind its number wherever the text names it: "68 pieces scones" is not what anybody meant.
    /// </summary>
    public static void NoteGiven(string name, Unit unit, int line, ProblemList problems)
    {
        Note(unit, line, problems);
        if (Counts.Contains(unit.Sign, StringComparer.OrdinalIgnoreCase))
            problems.Doubt(
                line,
                $"`{name}` is a count with the unit `{unit}`, and the text then reads `24 {unit}` before the word that says of what",
                "Leave the unit empty."
            );
    }

    public static void Note(Unit unit, int line, ProblemList problems)
    {
        if (Array.Find(Signs, known => known.Words.Contains(unit.Sign, StringComparer.OrdinalIgnoreCase)) is { Sign: { } sign })
            problems.Doubt(line, $"The unit is `{unit}`", $"Write `{sign}`: only then is an answer in it understood as one.");
    }
}
