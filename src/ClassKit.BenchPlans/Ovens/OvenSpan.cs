using ClassKit.Baking;

namespace ClassKit.BenchPlans;

/// <summary>Minutes in which an oven's dial stands still and the same things are in it.</summary>
/// <param name="From">The minute it begins.</param>
/// <param name="To">The minute it ends; above <paramref name="From"/>.</param>
/// <param name="Dial">What the dial says.</param>
/// <param name="Inside">The steps that go on in it; empty while it only heats, cools or waits.</param>
public sealed record OvenSpan(int From, int To, Temperature Dial, IReadOnlyList<PlannedStep> Inside)
{
    /// <summary>True if nothing is in it: it gets to its heat, or keeps it for what comes next.</summary>
    public bool IsEmpty => Inside.Count == 0;

    /// <summary>Which breads are in it, each once.</summary>
    public IReadOnlyList<int> Breads => [.. Inside.Select(step => step.Load.Bread).Distinct()];

    /// <summary>Whose loads of one bread are in it.</summary>
    public IReadOnlyList<Maker> MakersOf(int bread) => [.. Inside.Where(step => step.Load.Bread == bread).Select(step => step.Load.Maker)];

    /// <summary>True if both say the same of their oven.</summary>
    internal bool GoesOnAs(OvenSpan next) => To == next.From && Dial == next.Dial && Inside.Select(step => (step.Load, step.Step)).SequenceEqual(next.Inside.Select(step => (step.Load, step.Step)));
}
