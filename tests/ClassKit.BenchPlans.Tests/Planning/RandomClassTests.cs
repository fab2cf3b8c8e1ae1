using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.RuleOfThumb;
using ClassKit.BenchPlans.Tests.Checking;

namespace ClassKit.BenchPlans.Tests.Planning;

public sealed class RandomClassTests
{
    private static readonly int PerBatch = ClassKit.Tests.Trials.Of(40, 8);
    private const int Searched = 6;

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Every_plan_and_every_plan_after_an_offered_change_keeps_every_rule(int batch)
    {
        var planned = 0;
        for (var seed = batch * PerBatch; seed < (batch + 1) * PerBatch; seed++)
        {
            var bench = RandomClass.Of(seed);
            var planning = Planners.Brief.Plan(bench);
            if (planning.Plan is { } plan)
            {
                planned++;
                Sound(bench, plan, seed);
                Assert.InRange(planning.Quality!.Bound, 0, planning.Quality.Weighed);
                continue;
            }
            // Once the change is made the class is planned anew, as an instructor would.
            foreach (var change in planning.Changes.Take(2))
            {
                var changed = change.Apply(bench);
                var again = Planners.Brief.Plan(changed).Plan;
                Assert.True(again is not null, $"seed {seed}: {change} does not help");
                Sound(changed, again, seed);
            }
        }
        Assert.InRange(planned, PerBatch / 2, PerBatch);
    }

    [Fact]
    public void The_rule_of_thumb_keeps_every_rule_too()
    {
        var planned = 0;
        for (var seed = 0; seed < 300; seed++)
        {
            var bench = RandomClass.Of(seed);
            for (var shifts = 1; shifts <= bench.Teams; shifts++)
            {
                if (GreedyPlanner.Plan(bench, shifts) is not { } plan)
                    continue;
                planned++;
                Sound(bench, plan, seed);
            }
        }
        Assert.True(planned > 200, $"Only {planned} plans were made.");
    }

    /// <summary>The first bread in two ways, one of them for half of the teams and with a stand that the other has not.</summary>
    [Fact]
    public void A_series_that_teams_share_out_keeps_every_rule()
    {
        var (planned, ruled) = (0, 0);
        for (var seed = 0; seed < 60; seed++)
        {
            var drawn = RandomClass.Of(seed);
            if (drawn.Teams < 2)
                continue;
            var bench = Shared(drawn);
            foreach (var shifts in Enumerable.Range(1, bench.Teams))
            {
                if (GreedyPlanner.Plan(bench, shifts) is not { } simple)
                    continue;
                ruled++;
                Sound(bench, simple, seed);
            }
            // Searching takes its time, so only a few are searched for.
            if (planned >= Searched || GreedyPlanner.Plan(bench, 1) is null || Planners.Brief.Plan(bench).Plan is not { } plan)
                continue;
            planned++;
            Sound(bench, plan, seed);
        }
        Assert.True(planned == Searched && ruled > 20, $"Only {planned} and {ruled} plans were made.");
    }

    /// <summary>The first bread cools and is heated again, in whichever oven is free.</summary>
    [Fact]
    public void A_bread_that_is_baked_twice_keeps_every_rule()
    {
        var (planned, ruled) = (0, 0);
        for (var seed = 0; seed < 60; seed++)
        {
            var drawn = RandomClass.Of(seed);
            var bread = drawn.Breads[0];
            if (bread.Bake is null)
                continue;
            var twice = bread with
            {
                Steps = [.. bread.Steps, Bakery.Alone("Cool", 3, 6), .. bread.Steps.Skip(bread.Bake.Value.First).Take(1)],
            };
            var bench = drawn with { Breads = [twice, .. drawn.Breads.Skip(1)] };
            if (GreedyPlanner.Plan(bench, 1) is not { } simple)
                continue;
            ruled++;
            Sound(bench, simple, seed);
            if (planned >= Searched || Planners.Brief.Plan(bench).Plan is not { } plan)
                continue;
            planned++;
            Sound(bench, plan, seed);
        }
        Assert.True(planned == Searched && ruled > 15, $"Only {planned} and {ruled} plans were made.");
    }

    private static BenchClass Shared(BenchClass drawn)
    {
        var bread = drawn.Breads[0];
        int[] teams = [.. Enumerable.Range(1, drawn.Teams)];
        var other = bread with
        {
            Id = "other",
            Name = "Other",
            VariantOf = bread.Id,
            Teams = [.. teams.Where(team => team % 2 == 0)],
            Steps = [Bakery.Alone("Stand", 5, 5), .. bread.Steps],
        };
        return drawn with { Breads = [bread with { Teams = [.. teams.Where(team => team % 2 == 1)] }, .. drawn.Breads.Skip(1), other] };
    }

    private static void Sound(BenchClass bench, BenchPlan plan, int seed)
    {
        if (PlanChecker.Faults(bench, plan) is { Count: > 0 } faults)
            Assert.Fail($"seed {seed}: {string.Join("; ", faults)}");
    }
}
