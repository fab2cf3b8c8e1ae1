using ClassKit.Baking.Cooking;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Tests.Checking;

namespace ClassKit.BenchPlans.Tests.Planning;

/// <summary>What lacks something is cooked before what brings it, where one fat serves both.</summary>
public sealed class CookedFirstTests
{
    private static readonly BenchBread Slow = Fried("slow", 30);
    private static readonly BenchBread Quick = Fried("quick", 5);

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 25)];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_goes_first_is_out_of_the_fat_before_anything_else_goes_in(bool slowFirst)
    {
        var bench = Class(150, slowFirst ? 0 : 1);

        foreach (var planner in new[] { Planners.Usual, Planners.ByRule })
        {
            var planning = planner.Plan(bench);

            Assert.Empty(PlanChecker.Faults(bench, planning.Plan!));
            Assert.Empty(planning.NotCookedFirst);
        }
    }

    [Fact]
    public void Where_there_is_no_time_for_it_the_class_still_bakes_and_that_is_known()
    {
        var bench = Class(42, 0);

        foreach (var planner in new[] { Planners.Usual, Planners.ByRule })
        {
            var planning = planner.Plan(bench);

            Assert.Empty(PlanChecker.Faults(bench with { CookedFirst = [] }, planning.Plan!));
            Assert.Equal(bench.CookedFirst, planning.NotCookedFirst);
        }
        Assert.NotNull(Planners.Usual.Any(bench));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Classes_drawn_by_chance_keep_the_order_or_are_known_not_to(int seed)
    {
        var bench = Ordered(RandomClass.Of(seed));

        foreach (var planner in new[] { Planners.Brief, Planners.ByRule })
        {
            if (planner.Plan(bench) is not { Plan: { } plan } planning)
                continue;
            var asked = bench with { CookedFirst = [.. bench.CookedFirst.Except(planning.NotCookedFirst)] };
            Assert.Empty(PlanChecker.Faults(asked, plan));
        }
    }

    /// <summary>A demonstration at the fryer, before another bread's frying, waits until what lacks its batter is out; else it is known.</summary>
    [Theory]
    [InlineData(150, true)]
    [InlineData(46, false)]
    public void What_is_shown_in_the_fat_waits_for_what_lacks_it(int period, bool isKept)
    {
        var bench = Class(period, 0) with
        {
            CookedFirst = [],
            Demonstrations = [new("a drop", 3, new(1, 1)) { Uses = [new(EquipmentKind.Fryer, 1)] }],
            ShownBehind = [new(0, 0, CookingWay.Fryer)],
        };

        foreach (var planner in new[] { Planners.Usual, Planners.ByRule })
        {
            var planning = planner.Plan(bench);

            Assert.Empty(PlanChecker.Faults(bench, planning.Plan!));
            var last = planning.Plan!.Steps.Where(step => step.Load.Bread == 0).Max(step => step.End);
            Assert.Equal(isKept, last <= planning.Plan.Demonstrations[0].Start);
            Assert.Equal(isKept, planning.NotShownBehind.Count == 0);
        }
    }

    /// <summary>What must be seen before the bread itself is fried cannot wait for it: no order is asked for, and it is known.</summary>
    [Fact]
    public void What_shows_the_frying_of_a_bread_is_not_put_behind_it()
    {
        var bench = Class(150, 0) with
        {
            CookedFirst = [new(0, 1, CookingWay.Fryer)],
            Demonstrations = [new("a drop", 3, new(0, 1))],
            ShownBehind = [new(0, 0, CookingWay.Fryer)],
        };

        foreach (var planner in new[] { Planners.Usual, Planners.ByRule })
        {
            var planning = planner.Plan(bench);

            Assert.Empty(planning.NotCookedFirst);
            Assert.Equal(bench.ShownBehind, planning.NotShownBehind);
        }
    }

    /// <summary>The first step of every bread is cooked in one place, the last bread of the teams first.</summary>
    private static BenchClass Ordered(BenchClass bench)
    {
        var last = bench.Breads.Count(bread => !bread.IsForShow) - 1;
        return bench with
        {
            Breads =
            [
                .. bench.Breads.Select(bread =>
                    bread.IsForShow ? bread : bread with { Steps = [bread.Steps[0] with { Way = CookingWay.Pan }, .. bread.Steps.Skip(1)] }
                ),
            ],
            CookedFirst = [.. Enumerable.Range(0, last).Select(at => new CookedFirst(last, at, CookingWay.Pan))],
        };
    }

    private static BenchClass Class(int period, int first) =>
        new(new(period, 0, 0, 0), 3, 2, [new(EquipmentKind.Fryer, 6)], Bakery.Ovens(0, 1), [Slow, Quick], [])
        {
            CookedFirst = [new(first, 1 - first, CookingWay.Fryer)],
        };

    private static BenchBread Fried(string id, int minutes) =>
        new(
            id,
            id,
            [
                Bakery.Hands("Mix", 10, 10),
                Bakery.Hands("Fry", minutes, minutes) with
                {
                    Uses = [new(EquipmentKind.Fryer, 1)],
                    Way = CookingWay.Fryer,
                },
            ]
        );
}
