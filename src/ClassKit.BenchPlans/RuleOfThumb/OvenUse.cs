using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.RuleOfThumb;

/// <summary>A load in an oven, from the minute it goes in to the minute it comes out.</summary>
/// <param name="Bread">Which bread.</param>
/// <param name="Bake">Which time that it is in an oven.</param>
/// <param name="Stages">The steps of that, with their times.</param>
internal sealed record OvenUse(BenchBread Bread, BakeSteps Bake, IReadOnlyList<PlannedStep> Stages)
{
    public int Start => Stages[0].Start;

    public int End => Stages[^1].End;

    private OvenSetting First => Bread.Steps[Stages[0].Step].Oven!;

    private int Places => Stages.Max(stage => Bread.Steps[stage.Step].Oven!.Places);

    /// <summary>One time in the oven of a whole load.</summary>
    public static OvenUse Of(BenchBread bread, BakeSteps bake, IReadOnlyList<PlannedStep> steps) =>
        new(bread, bake, [.. steps.Skip(bake.First).Take(bake.Count)]);

    /// <summary>True of the same load the same time.</summary>
    public bool Is(OvenUse other) => Stages.SequenceEqual(other.Stages);

    /// <summary>True if it can go into an oven beside what is planned there.</summary>
    public bool FitsAmong(IReadOnlyList<OvenUse> others, OvenBank ovens)
    {
        foreach (var other in others)
        {
            if (!Shares(other) && !IsAfter(other, ovens) && !other.IsAfter(this, ovens))
                return false;
        }
        // Places taken rise only where a load goes in.
        return others
            .Append(this)
            .Select(use => use.Start)
            .Where(minute => minute >= Start && minute < End)
            .All(minute => Places + others.Where(use => use.Start <= minute && minute < use.End).Sum(use => use.Places) <= ovens.Places);
    }

    private bool IsAfter(OvenUse other, OvenBank ovens) =>
        Start >= other.End + ovens.ChangeMinutes(other.HeatLeft(ovens), First.Temperature);

    private Temperature HeatLeft(OvenBank ovens) =>
        ovens.HeatAfter(Stages.Select(stage => (Bread.Steps[stage.Step].Oven!.Temperature, stage.Minutes)));

    private bool Shares(OvenUse other) =>
        Bread.BakesTogether(Bake) || other.Bread.BakesTogether(other.Bake)
            ? (Bread, Bake) == (other.Bread, other.Bake)
                && Stages.Select(stage => (stage.Start, stage.End)).SequenceEqual(other.Stages.Select(stage => (stage.Start, stage.End)))
            : SameHeat(First.Temperature, other.First.Temperature);

    private static bool SameHeat(Temperature one, Temperature other) => one == other;
}
