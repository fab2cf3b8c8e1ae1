using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Tests.Checking;

namespace ClassKit.BenchPlans.Tests.Planning;

/// <summary>Tries every plan of a small class of one-team shifts, and knows the best by having seen them all.</summary>
internal static class AllPlans
{
    /// <summary>The lowest cost of any plan that the checker accepts; null if it accepts none.</summary>
    public static int? LowestCost(BenchClass bench, PlanWeights weights)
    {
        int? lowest = null;
        var loads = Enumerable
            .Range(0, bench.Breads.Count)
            .SelectMany(bread =>
                (bench.Breads[bread].LeftToInstructor ? [0] : Enumerable.Range(1, bench.Teams)).Select(team => new BenchLoad(
                    new Maker(team),
                    bread
                ))
            )
            .ToArray();
        var chains = loads
            .Select(load =>
                Chains(bench, load)
                    .Select(chain => (Steps: chain, Cost: Cost(bench, chain, weights)))
                    .OrderBy(chain => chain.Cost)
                    .ToArray()
            )
            .ToArray();
        Choose(0, 0, [], []);
        return lowest;

        void Choose(int at, int cost, PlannedStep[] steps, PlannedDemonstration[] shown)
        {
            if (lowest is { } known && cost >= known)
                return;
            if (at < loads.Length)
            {
                foreach (var chain in chains[at])
                    Choose(at + 1, cost + chain.Cost, [.. steps, .. chain.Steps], []);
                return;
            }
            if (shown.Length < bench.Demonstrations.Count)
            {
                var next = bench.Demonstrations[shown.Length];
                var first = next.Before is { } before
                    ? steps.Where(step => step.Load.Bread == before.Bread && step.Step == before.Step).Min(step => step.Start)
                    : bench.Time.PeriodMinutes;
                for (var start = first - next.Minutes; start >= 0; start--)
                    Choose(
                        at,
                        cost + (next.Before is null ? 0 : weights.Waiting * (first - start - next.Minutes)),
                        steps,
                        [.. shown, new(next, start)]
                    );
                return;
            }
            var plan = new BenchPlan(
                bench,
                [.. Enumerable.Range(1, bench.Teams).Select(team => new Shift([Maker.OfTeam(team)]))],
                steps,
                shown
            );
            var all = cost + (weights.Unlike * Unlike(bench, plan));
            if ((lowest is not { } best || all < best) && PlanChecker.Faults(bench, plan) is [])
                lowest = all;
        }
    }

    /// <summary>
    /// Of a class whose breads are one series that is baked: a quarter of an hour for a second oven, and how far apart they are in going
    /// in, in the steps and waits that both have.
    /// </summary>
    private static int Unlike(BenchClass bench, BenchPlan plan)
    {
        if (bench.Breads.All(bread => bread.VariantOf is null))
            return 0;
        var times = plan
            .Steps.GroupBy(step => step.Load)
            .SelectMany(load =>
            {
                var (steps, method) = (load.ToArray(), bench.Breads[load.Key.Bread].Steps);
                return steps.SelectMany(step =>
                    new[]
                    {
                        ($"{method[step.Step].Name} takes", step.End - step.Start),
                        ($"{method[step.Step].Name} waits", step.Step + 1 < steps.Length ? steps[step.Step + 1].Start - step.End : 0),
                        (step.Oven is null ? "nothing" : "goes in", step.Oven is null ? 0 : step.Start),
                    }
                );
            })
            .ToLookup(time => time.Item1, time => time.Item2);
        return (15 * (plan.Steps.Where(step => step.Oven is not null).Select(step => step.Oven).Distinct().Count() - 1))
            + times.Sum(time => time.Max() - time.Min());
    }

    private static IEnumerable<PlannedStep[]> Chains(BenchClass bench, BenchLoad load)
    {
        var tasting = bench.Time.PeriodMinutes - bench.Time.TastingMinutes - bench.Time.CleanupMinutes;
        return Grow([], bench.Time.SetupMinutes, tasting);

        IEnumerable<PlannedStep[]> Grow(PlannedStep[] steps, int from, int until)
        {
            var method = bench.Breads[load.Bread].Steps;
            if (steps.Length == method.Count)
            {
                yield return steps;
                yield break;
            }
            var step = method[steps.Length];
            for (var start = from; start <= until; start++)
            {
                for (var minutes = step.MinMinutes; minutes <= step.MaxMinutes && start + minutes <= tasting; minutes++)
                {
                    var end = start + minutes;
                    foreach (var oven in step.Oven is null ? [null] : Enumerable.Range(1, bench.Ovens.Count).Select(oven => (int?)oven))
                    {
                        foreach (
                            var chain in Grow(
                                [.. steps, new(load, steps.Length, start, end, oven)],
                                end + step.Wait.MinMinutes,
                                end + step.Wait.MaxMinutes
                            )
                        )
                            yield return chain;
                    }
                }
            }
        }
    }

    /// <summary>Counted here by itself, from what the weights say.</summary>
    private static int Cost(BenchClass bench, PlannedStep[] chain, PlanWeights weights)
    {
        var method = bench.Breads[chain[0].Load.Bread].Steps;
        var standing = bench.Breads[chain[0].Load.Bread].IsForShow
            ? 0
            : bench.Time.PeriodMinutes - bench.Time.TastingMinutes - bench.Time.CleanupMinutes - chain[^1].End;
        var waiting = 0;
        var hurry = 0;
        for (var at = 0; at < chain.Length; at++)
        {
            waiting += at + 1 < chain.Length ? chain[at + 1].Start - chain[at].End - method[at].Wait.MinMinutes : 0;
            hurry += method[at].People > 0 ? method[at].MaxMinutes - (chain[at].End - chain[at].Start) : 0;
        }
        return standing * weights.Standing + waiting * weights.Waiting + hurry * weights.Hurry;
    }
}
