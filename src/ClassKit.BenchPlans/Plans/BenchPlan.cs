using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Plans;

/// <summary>Who does what when.</summary>
/// <param name="Class">What it was planned for.</param>
/// <param name="Shifts">The teams that go together, in the order of their numbers.</param>
/// <param name="Steps">Every step of every load, load by load in the order of <see cref="BenchClass.Loads"/>, each load's steps in
/// order.</param>
/// <param name="Demonstrations">In the order of <see cref="BenchClass.Demonstrations"/>.</param>
public sealed record BenchPlan(
    BenchClass Class,
    IReadOnlyList<Shift> Shifts,
    IReadOnlyList<PlannedStep> Steps,
    IReadOnlyList<PlannedDemonstration> Demonstrations
)
{
    /// <summary>The steps of one load, in order.</summary>
    public IEnumerable<PlannedStep> StepsOf(BenchLoad load) => Steps.Where(step => step.Load == load);

    /// <summary>
    /// The minute itself, or the first of the demonstration that is being shown in it: amid one the instructor turns no dial and fetches
    /// nothing.
    /// </summary>
    public int FreeAt(int minute) => Demonstrations.FirstOrDefault(shown => shown.Start < minute && minute < shown.End)?.Start ?? minute;
}
