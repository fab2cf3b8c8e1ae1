using ClassKit.Baking.Cooking;

namespace ClassKit.BenchPlans.Classes;

/// <summary>
/// A bread that is cooked before a demonstration puts something into the same fat, or onto the same plate, that the bread lacks.
/// </summary>
/// <param name="Bread">What is cooked first, counted from 0.</param>
/// <param name="Demonstration">What is shown behind it, counted from 0.</param>
/// <param name="Way">Where both happen.</param>
public sealed record ShownBehind(int Bread, int Demonstration, CookingWay Way)
{
    /// <summary>The last step of the bread that is cooked there, counted from 0; null where none is, as where it is done ahead.</summary>
    public int? LastStep(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        var at = bench.Breads[Bread].Steps.ToList().FindLastIndex(step => step.Way == Way);
        return at < 0 ? null : at;
    }

    /// <summary>
    /// True if a plan may choose it: not where the bread's own cooking is what is shown, and must be seen before it is begun.
    /// </summary>
    public bool MayBe(BenchClass bench) =>
        LastStep(bench) is { } last
        && !(bench.Demonstrations[Demonstration].Before is { } before && bench.StepLike(Bread, before) is { } seen && seen <= last);
}
