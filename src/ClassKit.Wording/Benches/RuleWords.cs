using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Solving;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Benches;

/// <summary>What a rule asks of a class, with the numbers that make it tight.</summary>
public static class RuleWords
{
    /// <summary>What the rule asks, in an instructor's words.</summary>
    public static string Of(PlanRule rule, BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(bench);
        return rule.Kind switch
        {
            RuleKind.Demonstrations => Demonstrations(bench),
            RuleKind.People => People(bench),
            RuleKind.Windows => Windows(bench.Breads[rule.Bread]),
            RuleKind.Equipment => Equipment(rule.Equipment!, bench),
            RuleKind.Ovens => Ovens(bench),
            RuleKind.Period => Period(bench),
        };
    }

    private static string Period(BenchClass bench)
    {
        var longest = bench.Breads.MaxBy(bread => bread.ShortestMinutes)!;
        return FormattableString.Invariant(
            $"Time: of {bench.Time.PeriodMinutes} min, {Math.Max(0, bench.Time.WorkMinutes)} min are left between the beginning and the tasting. {longest.Name}: at least {longest.ShortestMinutes} min from the first step to the last."
        );
    }

    private static string Demonstrations(BenchClass bench) =>
        FormattableString.Invariant(
            $"Demonstrations: {bench.Demonstrations.Count}, {bench.Demonstrations.Sum(shown => shown.Minutes)} min together, during which every team watches and nobody works."
        );

    private static string People(BenchClass bench)
    {
        var work = Enumerable
            .Range(1, bench.Teams)
            .Max(team =>
                bench
                    .Breads.Where(bread => !bread.LeftToInstructor && bench.TeamsOf(bread).Contains(team))
                    .SelectMany(bread => bread.Steps)
                    .Sum(step => step.MinMinutes * Math.Min(step.People, bench.PeoplePerTeam))
            );
        return FormattableString.Invariant(
            $"People: a team has {bench.PeoplePerTeam} pairs of hands, for at least {work} min of hands-on work on all its breads."
        );
    }

    private static string Windows(BenchBread bread)
    {
        var waits = bread.Steps.SkipLast(1).Sum(step => step.Wait.MaxMinutes - step.Wait.MinMinutes);
        var keeps = bread.KeepsMinutes is { } minutes ? FormattableString.Invariant($", and is at its best within {minutes} min") : "";
        return FormattableString.Invariant($"{bread.Name}: the dough may wait {waits} min between its steps in all{keeps}.");
    }

    private static string Equipment(EquipmentKind kind, BenchClass bench)
    {
        var minutes =
            bench.Loads.Sum(load =>
                bench.Breads[load.Bread].Steps.Sum(step => step.MinMinutes * step.Uses.Where(use => use.Kind == kind).Sum(use => use.Count))
            ) + bench.Demonstrations.Sum(shown => shown.Minutes * shown.Uses.Where(use => use.Kind == kind).Sum(use => use.Count));
        var most = bench
            .Breads.SelectMany(bread => bread.Steps)
            .Select(step => step.Uses)
            .Concat(bench.Demonstrations.Select(shown => shown.Uses))
            .Max(uses => uses.Where(use => use.Kind == kind).Sum(use => use.Count));
        var much = most > bench.CountOf(kind) ? FormattableString.Invariant($", and one step takes {most}") : "";
        return FormattableString.Invariant(
            $"{kind.Counted(bench.CountOf(kind) ?? 0)}: all loads together take at least {minutes} min of {kind.One} time{much}."
        );
    }

    private static string Ovens(BenchClass bench)
    {
        var bakes = bench
            .Breads.Where(bread => bread.Bake is not null)
            .Select(bread =>
            {
                var oven = bread.Steps.First(step => step.Oven is not null).Oven!;
                var minutes = bread.Steps.Where(step => step.Oven is not null).Sum(step => step.MinMinutes);
                var together = bread.Bakes.Any(bread.BakesTogether);
                var loads = bread.LeftToInstructor ? 1 : bench.TeamsOf(bread).Count;
                return FormattableString.Invariant(
                    $"{bread.Name} {loads} × {Counted.Of(oven.Places, "place")}, {minutes} min from {oven.Temperature.Celsius:0} °C{(together ? " with the door shut" : "")}"
                );
            });
        return FormattableString.Invariant(
            $"{Counted.Of(bench.Ovens.Count, "oven")} with {Counted.Of(bench.Ovens.Places, "place")}{(bench.Ovens.Count == 1 ? "" : " each")}, at one temperature at a time: {string.Join("; ", bakes)}."
        );
    }
}
