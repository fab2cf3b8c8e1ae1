namespace ClassKit.Exercises.Authoring;

/// <summary>What the unit beside a cell says about the number in it.</summary>
public static class AnswerUnit
{
    /// <summary>The unit whose cells hold a fraction and show it times 100: 65 % is stored as 0.65.</summary>
    public const string Percent = "%";

    /// <summary>True if the cell asks for percent, so that both 0.65 and 65 are read as 65 %.</summary>
    public static bool IsPercent(string unit) => unit == Percent;

    /// <summary>True for money: people write 2.50 and never 2.5.</summary>
    public static bool IsMoney(string unit) => unit is "dollars" or "euros" or "$" or "€" or "£";

    /// <summary>The fewest decimals that a number of this unit is written with.</summary>
    internal static int LeastDecimals(string unit) => IsMoney(unit) ? 2 : 0;
}
