using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;
using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Solving;
using ClassKit.BenchPlans.Tests.Checking;

namespace ClassKit.BenchPlans.Tests.Conflicts;

/// <summary>Classes that cannot fit, for a reason that is known because they were made so.</summary>
public sealed class ConflictTests
{
    private static readonly BenchBread Flat = new(
        "flat",
        "Flatbreads",
        [
            Bakery.Hands("Mix", 5, 6),
            Bakery.Alone("Rest", 10, 20) with
            {
                Wait = new(0, 60),
            },
            Bakery.Hands("Griddle", 12, 15) with
            {
                Uses = [new(Bakery.Griddle, 1)],
            },
        ]
    );

    private static readonly BenchBread Loaf = new(
        "loaf",
        "Loaves",
        [
            Bakery.Hands("Sponge", 5, 10) with
            {
                Wait = WaitWindow.None,
            },
            Bakery.Alone("Ripen", 60, 90) with
            {
                RiseAt = Temperature.FromCelsius(24),
                MayBeDoneAhead = true,
            },
            Bakery.Hands("Mix", 10, 12) with
            {
                Wait = WaitWindow.None,
            },
            Bakery.Alone("Proof", 60, 80) with
            {
                RiseAt = Temperature.FromCelsius(26),
            },
            Bakery.Baked("Bake", 25, 30, 220, places: 2),
        ]
    );

    [Fact]
    public void Too_few_griddles_are_named_and_one_more_is_offered()
    {
        // Six teams on one griddle need 72 min; the first can begin after 15, and there are 60.
        var bench = Bakery.Simple(Flat, 60, teams: 6) with { Equipment = [new(Bakery.Griddle, 1)] };
        var planning = Planners.Usual.Plan(bench);

        Assert.Equal([RuleKind.Equipment, RuleKind.Period], Named(planning));
        Assert.Contains(new MoreEquipment(Bakery.Griddle, 1), planning.Changes);
        // 15 + 72 = 87 min, which a timetable makes 90.
        Assert.Equal(27, planning.MissingMinutes);
        Assert.Contains(new LongerPeriod(30), planning.Changes);
        Helps(bench, planning);
    }

    [Fact]
    public void Too_short_a_period_is_named_alone_and_the_day_before_is_offered()
    {
        // From the first step to the last 160 min, and there are 150.
        var bench = Bakery.Simple(Loaf, 150, ovens: 2, places: 2);
        var planning = Planners.Usual.Plan(bench);

        Assert.Equal([RuleKind.Period], Named(planning));
        Assert.True(planning.Conflict!.IsSmallest);
        Assert.Contains(new DoAhead(0, 1), planning.Changes);
        Assert.Contains(new LongerPeriod(10), planning.Changes);
        Assert.Equal(10, planning.MissingMinutes);
        Assert.Contains(planning.Changes, change => change is WarmTheRise);
        Helps(bench, planning);
    }

    [Fact]
    public void A_warmer_rise_is_as_much_shorter_as_the_yeast_model_says()
    {
        // 10 % more a degree (Sosland Publishing, Bake, "The science of fermentation"): 60 min at 26 °C are 60 / 1.1^6 = 33.9 min at 32 °C,
        // planned as 34.
        var warm = new WarmTheRise(0, Temperature.FromCelsius(32), YeastGasModel.Default).Apply(Bakery.Simple(Loaf, 150)).Breads[0].Steps;

        Assert.Equal((34, 46), (warm[3].MinMinutes, warm[3].MaxMinutes));
        Assert.Equal((28, 42), (warm[1].MinMinutes, warm[1].MaxMinutes));
        Assert.Equal(Loaf.Steps[4], warm[4]);
    }

    [Fact]
    public void An_oven_that_cannot_be_at_two_temperatures_is_named_with_what_may_not_wait()
    {
        BenchBread Bread(string name, double celsius) =>
            new(name, name, [Bakery.Hands("Mix", 5, 5) with { Wait = WaitWindow.None }, Bakery.Baked("Bake", 20, 20, celsius)])
            {
                KeepsMinutes = 10,
            };
        var bench = new BenchClass(new(120, 0, 0, 0), 1, 4, [], Bakery.Ovens(1, 4), [Bread("Cool", 160), Bread("Hot", 230)], []);
        var planning = Planners.Usual.Plan(bench);

        // One of the two has to be out 20 min and more before the tasting, and keeps 10. More time would not help.
        Assert.Equal([RuleKind.Windows, RuleKind.Windows, RuleKind.Ovens], [.. Named(planning).Take(3)]);
        Assert.Contains(new MoreOvens(1), planning.Changes);
        Assert.DoesNotContain(planning.Changes, change => change is LongerPeriod);
        Helps(bench, planning);
    }

    [Fact]
    public void Too_few_hands_are_named_and_a_bread_is_left_to_the_demonstration()
    {
        BenchBread Bread(string name) => new(name, name, [Bakery.Hands("Work", 30, 30)]);
        var bench = new BenchClass(new(50, 0, 0, 0), 3, 1, [], Bakery.Ovens(1, 1), [Bread("One"), Bread("Other")], []);
        var planning = Planners.Usual.Plan(bench);

        Assert.Equal([RuleKind.People, RuleKind.Period], Named(planning));
        Assert.Contains(planning.Changes, change => change is LeaveToInstructor);
        Assert.Contains(new LongerPeriod(10), planning.Changes);
        Helps(bench, planning);
    }

    [Fact]
    public void Demonstrations_that_leave_no_time_are_named()
    {
        var bench = Bakery.Simple(new("quick", "Quick", [Bakery.Hands("Work", 30, 30)]), 50) with
        {
            Demonstrations = [new("Long talk", 25, null)],
        };
        var planning = Planners.Usual.Plan(bench);

        Assert.Equal([RuleKind.Demonstrations, RuleKind.Period], Named(planning));
        Helps(bench, planning);
    }

    [Fact]
    public void Fewer_pieces_are_offered_where_a_load_takes_many_places()
    {
        // Four loads of two places in an oven of four: two bakes of 25 min after another, and every team waits 5 min at most.
        var bread = new BenchBread("rolls", "Rolls", [Bakery.Hands("Shape", 5, 5), Bakery.Baked("Bake", 25, 25, 220, places: 2)])
        {
            KeepsMinutes = 10,
        };
        var bench = Bakery.Simple(bread, 90, teams: 4, places: 4);
        var planning = Planners.Usual.Plan(bench);

        Assert.Contains(RuleKind.Ovens, Named(planning));
        Assert.Contains(new SmallerLoads(0), planning.Changes);
        Helps(bench, planning);
    }

    [Fact]
    public void Where_no_change_is_enough_two_together_are_offered()
    {
        // 30 min of griddle a team, six teams, one griddle, one hour: two griddles more are not enough, nor is an hour more.
        var bread = new BenchBread("flat", "Flatbreads", [Bakery.Hands("Griddle", 40, 40) with { Uses = [new(Bakery.Griddle, 1)] }]);
        var bench = Bakery.Simple(bread, 60, teams: 6) with { Equipment = [new(Bakery.Griddle, 1)] };
        var planning = Planners.Usual.Plan(bench);

        Assert.All(planning.Changes, change => Assert.IsType<SeveralChanges>(change));
        Assert.NotEmpty(planning.Changes);
        Helps(bench, planning);
    }

    [Fact]
    public void What_is_set_aside_may_not_fill_the_period()
    {
        var planning = Planners.Usual.Plan(Bakery.Simple(Flat, 60) with { Time = new(60, 20, 30, 10) });

        Assert.Null(planning.Plan);
        Assert.Equal(60, Assert.IsType<PlanNotice.NoTime>(planning.Notice).Time.PeriodMinutes);
    }

    [Fact]
    public void The_demonstration_moves_with_its_step_when_steps_are_done_the_day_before()
    {
        var bench = Bakery.Simple(Loaf, 200) with { Demonstrations = [new("Mixing", 5, new(0, 2)), new("Sponge", 5, new(0, 0))] };
        var changed = new DoAhead(0, 1).Apply(bench);

        Assert.Equal(["Mix", "Proof", "Bake"], changed.Breads[0].Steps.Select(step => step.Name));
        Assert.Equal([0, 0], changed.Demonstrations.Select(shown => shown.Before!.Value.Step));
    }

    private static RuleKind[] Named(BenchPlanning planning)
    {
        Assert.Null(planning.Plan);
        Assert.NotNull(planning.Conflict);
        return [.. planning.Conflict.Rules.Select(rule => rule.Kind)];
    }

    private static void Helps(BenchClass bench, BenchPlanning planning)
    {
        Assert.NotEmpty(planning.Changes);
        foreach (var change in planning.Changes)
        {
            var changed = change.Apply(bench);
            var plan = Planners.Usual.Plan(changed).Plan;
            Assert.True(plan is not null, change.ToString());
            Assert.Empty(PlanChecker.Faults(changed, plan));
        }
    }
}
