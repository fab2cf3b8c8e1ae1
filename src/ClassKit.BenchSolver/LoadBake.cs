using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchSolver;

/// <summary>One time that a shift's loads of a bread are in an oven.</summary>
/// <param name="Load">The loads.</param>
/// <param name="Steps">The steps in the oven.</param>
internal sealed record LoadBake(LoadTimes Load, BakeSteps Steps)
{
    /// <summary>How many places of an oven each load takes.</summary>
    public int Places => Enumerable.Range(Steps.First, Steps.Count).Max(step => Load.Bread.Steps[step].Oven!.Places);

    /// <summary>True if all in one oven go in and come out together.</summary>
    public bool IsTogether => Load.Bread.BakesTogether(Steps);

    /// <summary>True of the same bread the same time.</summary>
    public bool IsLike(LoadBake other) => Load.At == other.Load.At && Steps == other.Steps;

    /// <summary>What the oven is set to in one of the steps.</summary>
    public Temperature Dial(int step) => Load.Bread.Steps[step].Oven!.Temperature;

    /// <summary>In words, for the solver's log.</summary>
    public override string ToString() => FormattableString.Invariant($"{Load} bake {Steps.First}");
}
