using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Solving;
using ClassKit.BenchPlans.Trials;
using ClassKit.BenchSolver;

namespace ClassKit.BenchPlans.Tests.Changes;

public sealed class PeriodCutsTests
{
    private static readonly CpSatSolver Solver = new();

    private static PlanChange? Least(BenchClass bench) => PeriodCuts.Least(bench, Solver, PlannerSettings.Default);

    /// <summary>By hand: the buns take 3 + 5 + 40 + 5 + 25 + 18 + 10 = 106 min at their shortest, after the first rise 58.</summary>
    [Fact]
    public void A_bread_that_is_too_long_for_the_period_is_begun_the_day_before()
    {
        Assert.Equal(new DoAhead(0, 2), Least(Bakery.Simple(Bakery.Buns, 105)));
        Assert.Equal(new DoAhead(0, 2), Least(Bakery.Simple(Bakery.Buns, 58)));
    }

    [Fact]
    public void Where_even_the_rest_is_too_long_nothing_is_pretended() => Assert.Null(Least(Bakery.Simple(Bakery.Buns, 57)));

    [Fact]
    public void Two_breads_begun_before_are_one_change_and_the_rest_fits()
    {
        var bench = Bakery.Simple(Bakery.Buns, 60, ovens: 2) with
        {
            Breads = [Bakery.Buns, Bakery.Buns with { Id = "rolls", Name = "Rolls" }],
        };
        var change = Assert.IsType<SeveralChanges>(Least(bench));
        Assert.Equal([new DoAhead(0, 2), new DoAhead(1, 2)], change.Changes);
        Assert.NotNull(Solver.Solve(new(change.Apply(bench), PlanGoal.Any, 1, 1)).Plan);
    }

    [Fact]
    public void Steps_done_before_are_counted_so_that_the_rest_keep_their_numbers()
    {
        var after = new DoAhead(0, 2).Apply(Bakery.Simple(Bakery.Buns, 60)).Breads[0];
        Assert.Equal((3, "Fill"), (after.StepsDoneBefore, after.Steps[0].Name));
    }

    /// <summary>
    /// Two teams bake two breads of 35 min in 50 min: four loads, and three ovens with one place each. One bread can only be shown.
    /// </summary>
    [Fact]
    public void Where_nothing_keeps_one_bread_is_left_to_the_instructor()
    {
        var cake = new BenchBread("cake", "Cake", [Bakery.Hands("Mix", 5, 5), Bakery.Baked("Bake", 30, 30, 180)]);
        var bench = Bakery.Simple(cake, 50, teams: 2) with
        {
            Breads = [cake, cake with { Id = "tart", Name = "Tart" }],
            Ovens = Bakery.Ovens(3, 1),
        };
        Assert.Equal(new LeaveToInstructor(0), Least(bench));
        Assert.Null(Least(bench with { Ovens = Bakery.Ovens(2, 1) }));
    }
}
