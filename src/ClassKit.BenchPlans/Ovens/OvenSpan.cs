using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Ovens;

/// <summary>Minutes in which an oven's dial stands still and the same loads are in it.</summary>
/// <param name="From">The minute it begins.</param>
/// <param name="To">The minute it ends; above <paramref name="From"/>.</param>
/// <param name="Dial">What the dial says.</param>
/// <param name="Inside">The loads that have a place in it; empty while it only heats, cools or waits.</param>
public sealed record OvenSpan(int From, int To, Temperature Dial, IReadOnlyList<BenchLoad> Inside)
{
    /// <summary>True if nothing is in it: it gets to its heat, or keeps it for what comes next.</summary>
    public bool IsEmpty => Inside.Count == 0;

    /// <summary>Which breads are in it, each once.</summary>
    public IReadOnlyList<int> Breads => [.. Inside.Select(load => load.Bread).Distinct()];

    /// <summary>Whose loads of one bread are in it.</summary>
    public IReadOnlyList<Maker> MakersOf(int bread) => [.. Inside.Where(load => load.Bread == bread).Select(load => load.Maker)];

    /// <summary>True if both say the same of their oven.</summary>
    internal bool GoesOnAs(OvenSpan next) => To == next.From && Dial == next.Dial && Inside.SequenceEqual(next.Inside);
}
