using ClassKit.BenchPlans.Tests.Checking;

namespace ClassKit.BenchPlans.Tests.Planning;

public sealed class FullClassTests
{
    [Theory]
    [InlineData(150, 3, 6, 6)]
    [InlineData(150, 3, 4, 4)]
    [InlineData(180, 3, 3, 3)]
    [InlineData(150, 1, 6, 6)]
    public void Three_breads_for_24_students_are_planned_within_5_percent_of_the_best(int period, int ovens, int places, int burners)
    {
        var bench = Bakery.Full(period, ovens, places, burners);
        var planning = Planners.Usual.Plan(bench);

        Assert.NotNull(planning.Plan);
        Assert.Empty(PlanChecker.Faults(bench, planning.Plan));
        Assert.InRange(planning.Quality!.Gap, 0, 0.05);
    }

    [Fact]
    public void The_same_class_gets_the_same_plan_every_time()
    {
        var bench = Bakery.Full(places: 4, burners: 4);
        var (first, second) = (Planners.Usual.Plan(bench), Planners.Usual.Plan(bench));

        Assert.Equal(first.Plan!.Steps, second.Plan!.Steps);
        Assert.Equal(first.Plan.Demonstrations, second.Plan.Demonstrations);
        Assert.Equal(first.Quality, second.Quality);
    }

    [Fact]
    public void Teams_go_together_as_far_as_equipment_lets_them()
    {
        // Six burners serve six teams at once, four serve them in two turns.
        Assert.Single(Planners.Usual.Plan(Bakery.Full()).Plan!.Shifts);
        Assert.Equal(2, Planners.Usual.Plan(Bakery.Full(places: 4, burners: 4)).Plan!.Shifts.Count);
    }

    [Fact]
    public void Teams_of_one_shift_do_the_same_in_the_same_minute()
    {
        var plan = Planners.Usual.Plan(Bakery.Full(places: 4, burners: 4)).Plan!;

        Assert.All(plan.Shifts, shift =>
            Assert.All(Enumerable.Range(0, 3), bread =>
                Assert.Single(
                    shift
                        .Makers.Select(maker =>
                            string.Join(' ', plan.StepsOf(new(maker, bread)).Select(step => $"{step.Start}-{step.End}"))
                        )
                        .Distinct()
                )
            )
        );
    }
}
