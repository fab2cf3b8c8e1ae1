using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>The numbers that a cell's number may be meant as; see <see cref="Reading"/>.</summary>
internal static class CellReadings
{
    /// <summary>Itself, and 65 % where a percent cell holds 65.</summary>
    public static double[] Of(Part part, double held) => part.Unit.IsPercent ? [held, part.Unit.Held(held)] : [held];
}
