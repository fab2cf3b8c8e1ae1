namespace ClassKit.Exercises;

/// <summary>What the unit beside a cell says about the number in it.</summary>
public static class AnswerUnit
{
    /// <summary>The unit whose cells hold a fraction and show it times 100: 65 % is stored as 0.65.</summary>
    public const string Percent = "%";

    /// <summary>True if the cell asks for percent, so that both 0.65 and 65 are read as 65 %.</summary>
    public static bool IsPercent(string unit) => unit == Percent;
}
