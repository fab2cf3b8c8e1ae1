using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Tests.Checking;

namespace ClassKit.BenchPlans.Tests.Planning;

public sealed class NoSolverTests
{
    [Fact]
    public void Without_a_solver_a_rule_of_thumb_plans_and_says_so()
    {
        var planning = Planners.ByRule.Plan(Bakery.Full());

        Assert.Empty(PlanChecker.Faults(Bakery.Full(), planning.Plan!));
        Assert.False(planning.Quality!.IsProven);
        Assert.Equal(new PlanNotice.NoSolver(HasPlan: true), planning.Notice);
    }

    [Fact]
    public void Without_a_solver_and_without_a_plan_nothing_is_claimed()
    {
        var planning = Planners.ByRule.Plan(Bakery.Full(period: 100));

        Assert.Null(planning.Plan);
        Assert.Null(planning.Conflict);
        Assert.Empty(planning.Changes);
        Assert.Equal(new PlanNotice.NoSolver(HasPlan: false), planning.Notice);
    }
}
