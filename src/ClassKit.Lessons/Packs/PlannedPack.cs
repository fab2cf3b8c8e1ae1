using System.Diagnostics.CodeAnalysis;
using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Planning;

namespace ClassKit.Lessons.Packs;

/// <summary>
/// A pack whose class has been planned at its benches: the second stage. Planning takes a solver, which this room does not know.
/// </summary>
public record PlannedPack : ComputedPack
{
    /// <summary>The pack with its plan.</summary>
    /// <param name="computed">Computed for the breads that the plan leaves in the teams' hands.</param>
    /// <param name="bench">The plan, or why there is none.</param>
    [SetsRequiredMembers]
    public PlannedPack(ComputedPack computed, BenchPlanning bench)
        : base(computed) => Bench = bench;

    /// <summary>The bench plan, or why there is none.</summary>
    public BenchPlanning Bench { get; init; }

    /// <summary>What was cut or moved so that the class fits its period; null where all fits.</summary>
    public PeriodCut? Cut { get; init; }
}
