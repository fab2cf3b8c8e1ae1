using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Plans;

/// <summary>In what a plan treats members of a series unlike each other, beyond what the series changes.</summary>
public static class SeriesDifferences
{
    /// <summary>Every difference, series by series: ovens first, then when they begin, how long steps take, how long doughs wait.</summary>
    public static IReadOnlyList<SeriesDifference> In(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. BenchSeries.Of(plan.Class).SelectMany(series => Of(plan, series))];
    }

    private static IEnumerable<SeriesDifference> Of(BenchPlan plan, BenchSeries series)
    {
        var (bench, written) = (plan.Class, series.Members[0]);
        var ovens = new SeriesDifference.Ovens(
            written,
            [.. series.Members.Select(member => new SeriesOvens(member, OvensOf(plan, member))).Where(member => member.Ovens.Count > 0)]
        );
        var together = series.Together(bench);
        var begins = new SeriesDifference.Beginnings(written, Named(bench, together[0]), Times(plan, together, planned => planned.Start));
        var lengths = series
            .AlikeSteps(bench)
            .Select(group => new SeriesDifference.Lengths(written, Named(bench, group[0]), Times(plan, group, planned => planned.Minutes)));
        var waits = series
            .AlikeWaits(bench)
            .Select(group => new SeriesDifference.Waits(
                written,
                Named(bench, group[0]),
                Named(bench, group[0] with { Step = group[0].Step + 1 }),
                Times(plan, group, planned => WaitAfter(plan, planned))
            ));
        SeriesDifference[] all = [.. ovens.Members.Count > 0 ? [ovens] : Array.Empty<SeriesDifference>(), begins, .. lengths, .. waits];
        return all.Where(difference => difference.Minutes > 0);
    }

    private static int[] OvensOf(BenchPlan plan, int bread) =>
        [.. plan.Steps.Where(step => step.Load.Bread == bread).Select(step => step.Oven).OfType<int>().Distinct().Order()];

    private static int WaitAfter(BenchPlan plan, PlannedStep planned) =>
        plan.StepsOf(planned.Load).First(step => step.Step == planned.Step + 1).Start - planned.End;

    private static List<SeriesMinutes> Times(BenchPlan plan, IReadOnlyList<StepOfBread> group, Func<PlannedStep, int> minutes) =>
        [
            .. group
                .Select(of =>
                    (
                        of.Bread,
                        Minutes: plan.Steps.Where(step => step.Load.Bread == of.Bread && step.Step == of.Step).Select(minutes).ToArray()
                    )
                )
                .Where(each => each.Minutes.Length > 0)
                .Select(each => new SeriesMinutes(each.Bread, each.Minutes.Min(), each.Minutes.Max())),
        ];

    private static string Named(BenchClass bench, StepOfBread step) => bench.Breads[step.Bread].Steps[step.Step].Name;
}
