using ClassKit.Baking.Cooking;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Tests;
using ClassKit.Wording.Benches;

namespace ClassKit.Wording.Tests.Benches;

/// <summary>What a plan says of a demonstration that puts into a fat what a bread lacks.</summary>
public sealed class CookedFirstWordsTests
{
    [Theory]
    [InlineData(20, "First in the fat: Rice fritters, before the demonstration “A drop”.", "shows “A drop” when all of it is out.")]
    [InlineData(
        19,
        "Not first in the fat: Rice fritters, before the demonstration “A drop”. It is shown earlier",
        "before all of it is out."
    )]
    [InlineData(0, "Not first in the fat", "before all of it is out.")]
    public void It_is_said_whether_a_demonstration_comes_behind_what_lacks_its_batter(int minute, string plan, string guide)
    {
        var planning = Planned(minute);

        Assert.StartsWith(plan, Assert.Single(CookedFirstWords.Of(planning)), StringComparison.Ordinal);
        Assert.EndsWith(guide, CookedFirstWords.For(planning, CookingWay.Fryer, "rice", [], ["A drop"]), StringComparison.Ordinal);
    }

    /// <summary>Fried from minute 10 to minute 20.</summary>
    private static BenchPlanning Planned(int minute)
    {
        var bread = new BenchBread(
            "rice",
            "Rice fritters",
            [Bakery.Hands("Mix", 10, 10), Bakery.Hands("Fry", 10, 10) with { Way = CookingWay.Fryer }]
        );
        var bench = Bakery.Simple(bread, 60, teams: 1) with
        {
            Demonstrations = [new("A drop", 3, null)],
            ShownBehind = [new(0, 0, CookingWay.Fryer)],
        };
        BenchLoad load = new(Maker.OfTeam(1), 0);
        var plan = new BenchPlan(
            bench,
            [new([Maker.OfTeam(1)])],
            [new(load, 0, 0, 10, null), new(load, 1, 10, 20, null)],
            [new(bench.Demonstrations[0], minute)]
        );
        return new(plan, null, null, [], null);
    }
}
