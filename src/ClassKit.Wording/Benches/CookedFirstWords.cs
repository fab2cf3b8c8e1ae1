using System.Globalization;
using ClassKit.Baking.Cooking;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Plans;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Benches;

/// <summary>What a bench plan cooks before something else because one fat, plate or water carries over what is in a dough.</summary>
/// <remarks>No allergen is named: the plan hangs where all read it, and who keeps away from what is nobody's business.</remarks>
public static class CookedFirstWords
{
    /// <summary>A sentence for each bread that was asked to go first: that it does, or that no plan was found so.</summary>
    public static IReadOnlyList<string> Of(BenchPlanning planning)
    {
        ArgumentNullException.ThrowIfNull(planning);
        if (planning.Plan is not { Class: var bench })
            return [];
        var not = planning.NotCookedFirst;
        return
        [
            .. bench
                .CookedFirst.GroupBy(order => (order.Bread, order.Way, IsKept: !not.Contains(order)))
                .Select(group =>
                {
                    var (first, place) = (Title(bench, group.Key.Bread), Place(group.Key.Way));
                    var then = Phrases.List([.. group.Select(order => Title(bench, order.Before))]);
                    return group.Key.IsKept
                        ? $"First {place}: {first}, before {then}. {What(group.Key.Way)} carries over what is in a dough: {Begin(group.Key.Way)}."
                        : $"Not first {place}: {first}, before {then}. No plan was found so, and {What(group.Key.Way).ToLowerInvariant()} carries over what is in a dough: {Apart(group.Key.Way)}.";
                }),
            .. bench
                .ShownBehind.GroupBy(order => (order.Demonstration, order.Way, IsKept: !planning.NotShownBehind.Contains(order)))
                .Select(group =>
                {
                    var shown = $"the demonstration “{bench.Demonstrations[group.Key.Demonstration].Name}”";
                    var (first, what) = (Phrases.List([.. group.Select(order => Title(bench, order.Bread))]), What(group.Key.Way));
                    return group.Key.IsKept
                        ? $"First {Place(group.Key.Way)}: {first}, before {shown}. {what} carries over what is put into it."
                        : $"Not first {Place(group.Key.Way)}: {first}, before {shown}. It is shown earlier, and {what.ToLowerInvariant()} carries over what is put into it: show it elsewhere or only tell it, or {Apart(group.Key.Way)}.";
                }),
        ];
    }

    /// <summary>
    /// What the plan does for a bread that shares its fat, plate or water with others: before which it is cooked, and why not before some;
    /// empty without a plan.
    /// </summary>
    /// <param name="planning">The plan.</param>
    /// <param name="way">Where they are cooked.</param>
    /// <param name="bread">The bread, by its id.</param>
    /// <param name="with">Those whose fat, plate or water it is, by their ids.</param>
    /// <param name="shown">The demonstrations whose fat or plate it is, by their names.</param>
    public static string For(BenchPlanning planning, CookingWay way, string bread, IReadOnlyList<string> with, IReadOnlyList<string> shown)
    {
        ArgumentNullException.ThrowIfNull(planning);
        ArgumentNullException.ThrowIfNull(with);
        ArgumentNullException.ThrowIfNull(shown);
        if (planning.Plan is not { Class: var bench })
            return "";
        var not = planning.NotCookedFirst;
        var said = with.GroupBy(
                other =>
                    bench.CookedFirst.FirstOrDefault(order =>
                        order.Way == way && bench.Breads[order.Bread].Id == bread && bench.Breads[order.Before].Id == other
                    )
                        is not { } asked
                        ? "The bench plan does not cook it before {0}, since it holds something that they lack."
                    : not.Contains(asked) ? "No bench plan was found that cooks it before {0}."
                    : "The bench plan cooks it before {0}.",
                other => bench.Breads.First(each => each.Id == other).Name
            )
            .Select(group => string.Format(CultureInfo.InvariantCulture, group.Key, Phrases.List([.. group])));
        return string.Join(' ', [.. said, .. shown.Select(name => Shown(planning.Plan, way, bread, name))]);
    }

    /// <summary>When a demonstration is shown, held against when the last of a bread comes out: by the plan's clock, whatever was asked for.</summary>
    private static string Shown(BenchPlan plan, CookingWay way, string bread, string name)
    {
        var bench = plan.Class;
        var cooked = plan
            .Steps.Where(step => bench.Breads[step.Load.Bread].Id == bread && bench.Breads[step.Load.Bread].Steps[step.Step].Way == way)
            .ToList();
        var at = plan.Demonstrations.First(each => each.Demonstration.Name == name).Start;
        return cooked.Count == 0 ? ""
            : cooked.All(step => step.End <= at) ? $"The bench plan shows “{name}” when all of it is out."
            : $"The bench plan shows “{name}” before all of it is out.";
    }

    private static string Title(BenchClass bench, int bread) => bench.Breads[bread].Name;

    /// <summary>The place of a way, after “first”.</summary>
    private static string Place(CookingWay way) =>
        way switch
        {
            CookingWay.Fryer => "in the fat",
            CookingWay.Griddle => "on the griddle",
            CookingWay.Pan => "in the pan",
            _ => "in the water",
        };

    private static string What(CookingWay way) =>
        way switch
        {
            CookingWay.Fryer => "Fat",
            CookingWay.Griddle => "A griddle",
            CookingWay.Pan => "A pan",
            _ => "Water",
        };

    private static string Begin(CookingWay way) =>
        way switch
        {
            CookingWay.Fryer => "begin with new fat in a clean fryer",
            CookingWay.Griddle => "begin on a clean griddle",
            CookingWay.Pan => "begin with a clean pan",
            _ => "begin with new water in a clean pot",
        };

    private static string Apart(CookingWay way) =>
        way switch
        {
            CookingWay.Fryer => "give it new fat and a fryer of its own",
            CookingWay.Griddle => "give it a griddle of its own, or clean the griddle in between",
            CookingWay.Pan => "give it a pan of its own",
            _ => "give it new water in a pot of its own",
        };
}
