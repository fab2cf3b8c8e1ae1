using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;

namespace ClassKit.Wording.Answers;

/// <summary>What a number is rounded to.</summary>
internal static class RoundingWords
{
    /// <summary>A multiple of a step, in a direction.</summary>
    /// <param name="step">In the cell's own scale: 0.01 is a whole percent.</param>
    /// <param name="direction">In which direction.</param>
    /// <param name="unit">The unit of what is rounded.</param>
    public static string Of(decimal step, RoundingDirection direction, Unit unit)
    {
        var shown = unit.Shown(step);
        var places = shown switch
        {
            1 => Of(0, unit),
            0.1m => Of(1, unit),
            0.01m => Of(2, unit),
            0.001m => Of(3, unit),
            _ => string.Create(CultureInfo.InvariantCulture, $"a multiple of {shown:0.##########}"),
        };
        return direction switch
        {
            RoundingDirection.Nearest => places,
            RoundingDirection.Up => places + " above it",
            RoundingDirection.Down or RoundingDirection.TowardsZero => places + " below it",
        };
    }

    /// <summary>So many decimals, 0 to 3.</summary>
    public static string Of(int decimals, Unit unit) =>
        (decimals, unit.IsPercent) switch
        {
            (0, true) => "whole percent",
            (0, false) => "a whole number",
            (1, _) => "one decimal",
            (2, _) => "two decimals",
            _ => "three decimals",
        };
}
