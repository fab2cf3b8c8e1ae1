using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Plans;

/// <summary>A step with its time. Minutes count from the beginning of the class.</summary>
/// <param name="Load">Whose bread.</param>
/// <param name="Step">Which of the bread's steps, counted from 0.</param>
/// <param name="Start">The minute it begins.</param>
/// <param name="End">The minute it ends.</param>
/// <param name="Oven">Which oven, counted from 1; null outside the oven.</param>
public sealed record PlannedStep(BenchLoad Load, int Step, int Start, int End, int? Oven)
{
    /// <summary>How long it is planned to take.</summary>
    public int Minutes => End - Start;
}
