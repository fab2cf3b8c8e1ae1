using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Judging.Slips;

/// <summary>Rounding as a student sees it: a percent cell that shows no decimals holds two.</summary>
internal static class Decimals
{
    private const int OfPercent = 2;

    public static double Round(double value, int decimals, Unit unit) =>
        Math.Round(value, unit.IsPercent ? decimals + OfPercent : decimals, MidpointRounding.AwayFromZero);
}
