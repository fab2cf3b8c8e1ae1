namespace ClassKit.Exercises.Authoring;

/// <summary>What the unit beside a cell says about the number in it.</summary>
public static class AnswerUnit
{
    /// <summary>The unit whose cells hold a fraction and show it times 100: 65 % is stored as 0.65.</summary>
    public const string Percent = "%";

    /// <summary>What money is called where it is asked for.</summary>
    private static readonly HashSet<string> Money = new(StringComparer.OrdinalIgnoreCase)
    {
        "dollars",
        "dollar",
        "euros",
        "euro",
        "$",
        "€",
        "£",
        "¥",
        "CHF",
        "EUR",
        "GBP",
        "USD",
        "pounds sterling",
    };

    /// <summary>True if the cell asks for percent, so that both 0.65 and 65 are read as 65 %.</summary>
    public static bool IsPercent(string unit) => unit == Percent;

    /// <summary>
    /// What a cell's number is multiplied with to be read beside its unit: 100 in percent, else 1. Nobody else knows the 100.
    /// </summary>
    public static int Scale(string unit) => IsPercent(unit) ? 100 : 1;

    /// <summary>A cell's number as it is read beside its unit: 65 for 0.65 in percent.</summary>
    public static double Shown(string unit, double held) => held * Scale(unit);

    /// <inheritdoc cref="Shown(string, double)"/>
    public static decimal Shown(string unit, decimal held) => held * Scale(unit);

    /// <summary>What a cell holds for a number that is read beside its unit: 0.65 for 65 in percent.</summary>
    public static double Held(string unit, double shown) => shown / Scale(unit);

    /// <inheritdoc cref="Held(string, double)"/>
    public static decimal Held(string unit, decimal shown) => shown / Scale(unit);

    /// <summary>True for money, however it is called: people write 2.50 and never 2.5, and a sign of it before a number.</summary>
    public static bool IsMoney(string unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return Money.Contains(unit.Trim(' ', '.', ',', ';', '(', ')', '[', ']'));
    }

    /// <summary>The fewest decimals that a number of this unit is written with.</summary>
    internal static int LeastDecimals(string unit) => IsMoney(unit) ? 2 : 0;
}
