using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using Google.OrTools.Sat;

namespace ClassKit.BenchSolver;

/// <summary>In how many minutes members of a series differ beyond what the series changes, in the solver's terms.</summary>
internal sealed class SeriesModel(CpModel model, BenchClass bench, PlanTimes times, OvenModel? ovens)
{
    /// <summary>The same sum as <see cref="PlanCost.UnlikeMinutes"/>.</summary>
    public LinearExpr Unlike() =>
        LinearExpr.Sum(BenchSeries.Of(bench).SelectMany((series, at) => Of(series, $"series {at}")).Append(LinearExpr.Constant(0)));

    private IEnumerable<LinearExpr> Of(BenchSeries series, string name)
    {
        yield return Spread(Found(series.Together(bench), (load, step) => load.Starts[step]), $"{name} begins");
        foreach (var (at, group) in series.AlikeSteps(bench).Index())
            yield return Spread(Found(group, (load, step) => load.Length(step)), $"{name} length {at}");
        foreach (var (at, group) in series.AlikeWaits(bench).Index())
            yield return Spread(Found(group, (load, step) => load.Starts[step + 1] - load.Ends[step]), $"{name} wait {at}");
        if (ovens is not null)
            yield return SeriesDifference.OvenMinutes * OvensBeyondOne(series, name);
    }

    private LinearExpr[] Found(IReadOnlyList<StepOfBread> group, Func<LoadTimes, int, LinearExpr> minutes) =>
        [.. group.SelectMany(of => times.Loads.Where(load => load.At == of.Bread).Select(load => minutes(load, of.Step)))];

    private LinearExpr Spread(LinearExpr[] minutes, string name)
    {
        if (minutes.Length < 2)
            return LinearExpr.Constant(0);
        var (least, spread) = (model.NewIntVar(0, times.Horizon, $"{name} least"), model.NewIntVar(0, times.Horizon, $"{name} spread"));
        foreach (var each in minutes)
        {
            model.Add(each >= least);
            model.Add(each <= least + spread);
        }
        return spread;
    }

    private LinearExpr OvensBeyondOne(BenchSeries series, string name)
    {
        LoadTimes[] baked = [.. times.Loads.Where(load => series.Members.Contains(load.At) && load.Bread.Bake is not null)];
        if (baked.Length == 0)
            return LinearExpr.Constant(0);
        var beyond = model.NewIntVar(0, bench.Ovens.Count - 1, $"{name} ovens");
        BoolVar[] used = [.. Enumerable.Range(0, bench.Ovens.Count).Select(oven => model.NewBoolVar($"{name} {oven}"))];
        foreach (var load in baked)
        {
            foreach (var (mine, any) in load.Bread.Bakes.SelectMany(bake => ovens!.UsedBy(load, bake).Zip(used)))
                model.AddImplication(mine, any);
        }
        model.Add(LinearExpr.Sum(used) <= beyond + 1);
        return beyond;
    }
}
