using System.Diagnostics;
using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Benches;

/// <summary>What an instructor could change so that a class fits, as instructions.</summary>
public static class PlanChangeWords
{
    /// <summary>The change as an instruction: <c>Make the period 10 min longer: 160 min.</c></summary>
    /// <param name="change">The change.</param>
    /// <param name="bench">The class as it is.</param>
    public static string Of(PlanChange change, BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return change switch
        {
            LongerPeriod(var minutes) => FormattableString.Invariant(
                $"Make the period {minutes} min longer: {bench.Time.PeriodMinutes + minutes} min."
            ),
            MoreOvens(var more) => FormattableString.Invariant($"Add {Counted.Of(more, "oven")}: {bench.Ovens.Count + more} in all."),
            MoreEquipment(var kind, var more) => FormattableString.Invariant(
                $"Add {kind.Counted(more)}: {kind.Counted((bench.CountOf(kind) ?? 0) + more)} in all."
            ),
            LeaveToInstructor(var bread) =>
                $"Leave the {bench.Breads[bread].Name} to the demonstration: the instructor makes one load for all.",
            SmallerLoads(var bread) => SmallerLoad(bench.Breads[bread]),
            DoAhead(var bread, var through) => Ahead(bench.Breads[bread], through),
            WarmTheRise warm => Warm(warm, bench),
            SeveralChanges(var changes) => Several(changes, bench),
            _ => throw new UnreachableException($"No words for {change}."),
        };
    }

    private static string SmallerLoad(BenchBread bread)
    {
        var places = SmallerLoads.Places(bread);
        return FormattableString.Invariant(
            $"Make fewer {bread.Name}: {places - 1} of {places} oven places a load, and as much less dough."
        );
    }

    private static string Ahead(BenchBread bread, int through) =>
        $"Do the {bread.Name} the day before up to and with \"{bread.Steps[through].Name}\", keep it cold, and begin the class with \"{bread.Steps[through + 1].Name}\".";

    private static string Warm(WarmTheRise warm, BenchClass bench)
    {
        var (before, after) = (bench.Breads[warm.Bread], warm.Apply(bench).Breads[warm.Bread]);
        var rises = before
            .Steps.Zip(after.Steps)
            .Where(pair => pair.First != pair.Second)
            .Select(pair =>
                FormattableString.Invariant(
                    $"{pair.First.Name} {pair.Second.MinMinutes}–{pair.Second.MaxMinutes} min instead of {pair.First.MinMinutes}–{pair.First.MaxMinutes}"
                )
            );
        return FormattableString.Invariant($"Let the {before.Name} rise at {warm.Temperature.Celsius:0} °C: {string.Join(", ", rises)}.");
    }

    /// <summary>Each as it is to be done once those before it are done.</summary>
    private static string Several(IReadOnlyList<PlanChange> changes, BenchClass bench)
    {
        var words = new List<string>();
        foreach (var change in changes)
        {
            words.Add(Of(change, bench));
            bench = change.Apply(bench);
        }
        return string.Join(" And: ", words);
    }
}
