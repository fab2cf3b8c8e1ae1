using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Tests.Checking;

namespace ClassKit.BenchPlans.Tests.Planning;

/// <summary>A class that has more time than it needs begins with work and has the time to spare at its end.</summary>
public sealed class SoonerTests
{
    private static readonly BenchBread Scones = new(
        "scones",
        "Scones",
        [Bakery.Hands("Mix", 5, 5), Bakery.Baked("Bake", 15, 15, 210), Bakery.Alone("Cool", 5, 5)]
    );

    public static TheoryData<string> Ways => SeriesTests.Ways;

    [Theory]
    [MemberData(nameof(Ways))]
    public void Nobody_waits_for_hours_to_begin(string by)
    {
        // 25 min of work in 300, of which 10 begin, 20 are for tasting and 15 for cleaning up: done by 10 + 25 + 20 + 15 = 70.
        var plan = Planned(Bakery.Simple(Scones, 300) with { Time = new(300, 10, 20, 15) }, by);

        Assert.Equal(
            (10, 35, 70, 230),
            (plan.Steps.Min(step => step.Start), plan.Class.Time.ReadyBy, plan.Class.Time.DoneBy, plan.Class.Time.SpareMinutes)
        );
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Nothing_goes_into_an_oven_that_is_not_hot_yet(string by)
    {
        // The oven takes 40 min: mixing begins 5 min before, or as much sooner as the dough may wait.
        var plan = Planned(Bakery.Simple(Scones, 300) with { Ovens = Bakery.Ovens(1, 1, heatUp: 40) }, by);

        Assert.Equal(40, plan.Steps.Where(step => step.Oven is not null).Min(step => step.Start));
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_few_minutes_are_left_for_a_welcome_that_runs_over(string by) =>
        Assert.Equal((15, 0), Begins(Planned(Bakery.Simple(Scones, 40), by)));

    private static (int Start, int Spare) Begins(BenchPlan plan) => (plan.Steps.Min(step => step.Start), plan.Class.Time.SpareMinutes);

    private static BenchPlan Planned(BenchClass bench, string by)
    {
        var plan = (by == "solver" ? Planners.Usual : Planners.ByRule).Plan(bench).Plan!;
        Assert.Empty(PlanChecker.Faults(bench, plan));
        return plan;
    }
}
