using ClassKit.Baking.Cooking;

namespace ClassKit.BenchPlans.Classes;

/// <summary>
/// A bread that is cooked before another where both go through one fat, over one plate or into one water, which carries over what is in a
/// dough.
/// </summary>
/// <param name="Bread">What is cooked first, counted from 0.</param>
/// <param name="Before">What waits for it, counted from 0.</param>
/// <param name="Way">Where both are cooked.</param>
public sealed record CookedFirst(int Bread, int Before, CookingWay Way)
{
    /// <summary>True where every maker has a fat, plate or water to itself: then each keeps the order for itself.</summary>
    public bool EachForItself { get; init; }

    /// <summary>
    /// The last step of what is cooked first that is cooked there, counted from 0; null where none is, as where it is done ahead.
    /// </summary>
    public int? LastStep(BenchClass bench) => Cooked(bench, Bread) is [.., var last] ? last : null;

    /// <summary>The first step of what waits for it that is cooked there, counted from 0; null where none is.</summary>
    public int? FirstStep(BenchClass bench) => Cooked(bench, Before) is [var first, ..] ? first : null;

    private int[] Cooked(BenchClass bench, int bread)
    {
        ArgumentNullException.ThrowIfNull(bench);
        var steps = bench.Breads[bread].Steps;
        return [.. Enumerable.Range(0, steps.Count).Where(at => steps[at].Way == Way)];
    }
}
