using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Tests.Checking;

namespace ClassKit.BenchPlans.Tests.Planning;

/// <summary>What is kept cold has one clock, from the refrigerator to the table: FDA Food Code 3-501.19(B).</summary>
public sealed class ColdFillingTests
{
    private static BenchBread Filled(int? within) =>
        new("filled", "Filled buns", [Bakery.Hands("Fill", 10, 10) with { ServedWithinMinutes = within }, Bakery.Hands("Dust", 5, 5)]);

    /// <summary>One pair of hands makes both breads, one after the other: the one that may not stand is the second, whichever it is.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void A_filling_is_planned_within_its_time_to_the_tasting(int limited)
    {
        var bench = new BenchClass(
            new(120, 0, 0, 0),
            1,
            1,
            [],
            Bakery.Ovens(0, 1),
            [.. new[] { 0, 1 }.Select(at => Filled(at == limited ? 20 : null) with { Id = $"bread {at}" })],
            []
        );

        foreach (var planner in new[] { Planners.Usual, Planners.ByRule })
        {
            var plan = planner.Plan(bench).Plan!;

            Assert.Empty(PlanChecker.Faults(bench, plan));
            Assert.All(plan.Steps.Where(step => step.Load.Bread == limited), step =>
                Assert.InRange(plan.Class.Time.ReadyBy - step.Start, 0, 20)
            );
        }
    }

    /// <summary>It takes 15 minutes from its beginning.</summary>
    [Fact]
    public void Where_the_time_is_shorter_than_the_work_there_is_no_plan()
    {
        var bench = new BenchClass(new(120, 0, 0, 0), 1, 1, [], Bakery.Ovens(0, 1), [Filled(14)], []);

        Assert.Null(Planners.Usual.Plan(bench).Plan);
        Assert.Null(Planners.ByRule.Plan(bench).Plan);
        Assert.NotNull(Planners.Usual.Plan(bench with { Breads = [Filled(15)] }).Plan);
    }

    /// <summary>Mixed for 20 minutes and risen for 60 at most the day before, in the cold over night: 160 of 240 minutes are left.</summary>
    [Fact]
    public void A_night_in_the_cold_begins_no_clock_anew()
    {
        var dough = new BenchBread(
            "dough",
            "Dough",
            [
                Bakery.Hands("Mix", 15, 20) with
                {
                    BakedWithinMinutes = 240,
                    Wait = new(0, 10),
                },
                Bakery.Hands("Rise", 50, 60) with
                {
                    BakedWithinMinutes = 240,
                    Wait = new(0, 10),
                },
                Bakery.Hands("Cold rise", 600, 900) with
                {
                    BakedWithinMinutes = 240,
                    IsInTheCold = true,
                    MayBeDoneAhead = true,
                },
                Bakery.Hands("Shape", 10, 10) with
                {
                    BakedWithinMinutes = 240,
                },
                Bakery.Hands("Bake", 10, 10),
            ]
        );
        var bench = new BenchClass(new(120, 0, 0, 0), 1, 1, [], Bakery.Ovens(0, 1), [dough], []);

        var left = new DoAhead(0, 2).Apply(bench).Breads[0].Steps;

        Assert.Equal([160, null], left.Select(step => step.BakedWithinMinutes));
    }
}
