namespace ClassKit.BenchPlans.Tests.Checking;

/// <summary>The checker is what the plans are held against, so it is broken plans that it is held against.</summary>
public sealed class PlanCheckerTests
{
    private static readonly BenchClass Bench = Bakery.Full();
    private static readonly BenchPlan Sound = GreedyPlanner.Plan(Bench, 1)!;

    [Fact]
    public void A_sound_plan_has_no_fault() => Assert.Empty(PlanChecker.Faults(Bench, Sound));

    [Fact]
    public void A_missing_step_is_seen() => Broken(Sound with { Steps = [.. Sound.Steps.Skip(1)] }, "not every step");

    [Fact]
    public void A_missing_demonstration_is_seen() => Broken(Sound with { Demonstrations = [.. Sound.Demonstrations.Skip(1)] }, "not those of the class");

    [Fact]
    public void Work_during_the_set_up_is_seen() => Broken(Moved(0, 0, -60), "begins during the set-up");

    [Fact]
    public void A_bread_that_comes_late_is_seen() => Broken(Moved(0, 0, 20), "not ready by the tasting");

    [Fact]
    public void A_rise_that_is_too_short_is_seen() => Broken(Changed(0, 2, step => step with { End = step.End - 15 }), "does not take as long");

    [Fact]
    public void A_dough_that_waits_too_long_is_seen() => Broken(Changed(2, 0, step => step with { Start = step.Start - 40, End = step.End - 40 }), "does not go on in time");

    [Fact]
    public void A_bread_that_changes_ovens_is_seen() => Broken(Changed(1, 4, step => step with { Oven = step.Oven % 3 + 1 }), "does not go on in time");

    [Fact]
    public void An_oven_that_is_not_there_is_seen() => Broken(Changed(0, 5, step => step with { Oven = 9 }), "an oven that is not there");

    [Fact]
    public void Doughs_outside_the_oven_are_seen() => Broken(Changed(0, 5, step => step with { Oven = null }), "against the method");

    [Fact]
    public void Two_temperatures_in_one_oven_are_seen() =>
        Broken(Changed(0, 5, step => step with { Oven = Sound.Steps.First(other => other.Load.Bread == 2 && other.Oven is not null).Oven }), "two temperatures at once");

    [Fact]
    public void A_door_opened_too_early_is_seen() => Broken(Moved(1, 0, -5, team: 2), "opened while it must stay shut");

    [Fact]
    public void A_demonstration_after_the_fact_is_seen() =>
        Broken(Sound with { Demonstrations = [Sound.Demonstrations[0] with { Start = 110 }, .. Sound.Demonstrations.Skip(1)] }, "after somebody has begun");

    [Fact]
    public void Hands_at_work_during_a_demonstration_are_seen()
    {
        var mixing = Sound.Steps.First(step => step.Load.Bread == 2 && step.Step == 0);
        Broken(Sound with { Demonstrations = [.. Sound.Demonstrations.Take(2), Sound.Demonstrations[2] with { Start = mixing.Start }] }, "works during a demonstration");
    }

    [Fact]
    public void Colliding_demonstrations_are_seen() =>
        Broken(Sound with { Demonstrations = [.. Sound.Demonstrations.Select(shown => shown with { Start = 10 })] }, "collide");

    [Fact]
    public void Too_little_equipment_is_seen() => Broken(Bench with { Equipment = [new(Bakery.Burner, 5)] }, "not enough burners");

    [Fact]
    public void Too_few_hands_are_seen() => Broken(Bench with { PeoplePerTeam = 1 }, "has too few hands");

    [Fact]
    public void An_overfull_oven_is_seen() => Broken(Bench with { Ovens = Bench.Ovens with { Places = 5 } }, "overfull");

    [Fact]
    public void A_cold_oven_is_seen() => Broken(Bench with { Ovens = Bench.Ovens with { HeatUpMinutes = 120 } }, "before it is hot");

    [Fact]
    public void A_bread_that_stands_too_long_is_seen()
    {
        var bench = Bench with { Breads = [Bakery.Buns, Bakery.Popovers with { KeepsMinutes = 3 }, Bakery.Muffins] };
        Assert.Contains(PlanChecker.Faults(bench, Moved(1, 0, -5)), fault => fault.Contains("stands too long", StringComparison.Ordinal));
    }

    [Fact]
    public void An_oven_that_cannot_change_its_heat_in_time_is_seen()
    {
        // 40 °C hotter at 10 °C a minute takes four minutes, and three are not enough.
        var cool = new BenchBread("cool", "Cool", [Bakery.Baked("Bake", 10, 10, 160)]);
        var hot = new BenchBread("hot", "Hot", [Bakery.Baked("Bake", 10, 10, 200)]);
        var bench = new BenchClass(new(40, 0, 0, 0), 1, 1, [], Bakery.Ovens(1, 1), [cool, hot], []);

        Assert.Empty(PlanChecker.Faults(bench, After(4)));
        Assert.Contains("oven 1 cannot change its temperature in time", PlanChecker.Faults(bench, After(3)));

        BenchPlan After(int minutes) => new(bench, [new([Maker.OfTeam(1)])],
            [new(new(Maker.OfTeam(1), 0), 0, 0, 10, 1), new(new(Maker.OfTeam(1), 1), 0, 10 + minutes, 20 + minutes, 1)], []);
    }

    private static BenchPlan Moved(int bread, int from, int minutes, int team = 1) => Sound with
    {
        Steps = [.. Sound.Steps.Select(step => step.Load == new BenchLoad(Maker.OfTeam(team), bread) && step.Step >= from ? step with { Start = step.Start + minutes, End = step.End + minutes } : step)],
    };

    private static BenchPlan Changed(int bread, int at, Func<PlannedStep, PlannedStep> change) => Sound with
    {
        Steps = [.. Sound.Steps.Select(step => step.Load == new BenchLoad(Maker.OfTeam(1), bread) && step.Step == at ? change(step) : step)],
    };

    private static void Broken(BenchPlan plan, string fault) =>
        Assert.Contains(PlanChecker.Faults(Bench, plan), found => found.Contains(fault, StringComparison.Ordinal));

    private static void Broken(BenchClass bench, string fault)
    {
        var faults = PlanChecker.Faults(bench, Sound);
        Assert.Contains(faults, found => found.Contains(fault, StringComparison.Ordinal));
        Assert.All(faults, found => Assert.Contains(fault, found, StringComparison.Ordinal));
    }
}
