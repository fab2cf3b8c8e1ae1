using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Notes an oven that most likely was meant in the other scale: 410 °C for 410 °F.</summary>
internal static class UnusualHeat
{
    /// <summary>In °C. From memory: household and deck ovens end at 250 to 320.</summary>
    private const double HottestOven = 330;

    public static void Note(MethodStep step, int line, ProblemList problems)
    {
        if (step is { InOven: true, Temperature.Celsius: > HottestOven and var celsius })
            problems.Doubt(line, $"The oven of `{step.Name}` is at {celsius:0} °C, hotter than most ovens get", $"If it was meant so, write `oven {celsius:0} °F`. Leave it if your oven gets that hot.");
    }
}
