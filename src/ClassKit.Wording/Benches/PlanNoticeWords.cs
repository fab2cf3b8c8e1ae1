using System.Diagnostics;
using System.Globalization;
using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Conflicts;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Solving;

namespace ClassKit.Wording.Benches;

/// <summary>What the reader of a bench plan must know besides.</summary>
public static class PlanNoticeWords
{
    /// <summary>More rules than these make no reason any more.</summary>
    private const int MostNamed = 2;

    private const string NoSolver =
        "The constraint solver cannot be loaded on this machine: it is native code, and there is none for this kind of machine or a system library that it needs is missing.";

    /// <summary>The notice in a sentence or two.</summary>
    public static string Of(PlanNotice notice) =>
        notice switch
        {
            PlanNotice.NoTime(var time) => string.Create(
                CultureInfo.InvariantCulture,
                $"What is set aside fills the period: {time.SetupMinutes} min to begin, {time.TastingMinutes} min to taste and {time.CleanupMinutes} min to clean up leave nothing of {time.PeriodMinutes} min."
            ),
            PlanNotice.NotFound => "No plan was found, and it was not proven that there is none.",
            PlanNotice.NoSolver(HasPlan: true) =>
                $"{NoSolver} This plan keeps every rule, but was made by a rule of thumb: there may be a better one.",
            PlanNotice.NoSolver => $"{NoSolver} The rule of thumb that stands in for it found no plan; there may be one all the same.",
            _ => throw new UnreachableException($"No words for {notice}."),
        };

    /// <summary>What was cut of a lesson that does not fit its period.</summary>
    public static string Of(PeriodCut cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"All of the lesson does not fit {cut.Bench.Time.PeriodMinutes} min. {Why(cut.Conflict, cut.MissingMinutes, cut.Bench)}{PlanChangeWords.Of(cut.Change, cut.Bench)}"
        );
    }

    /// <summary>What would make a class fit for which there is no plan.</summary>
    /// <param name="planning">What came of planning it.</param>
    /// <param name="bench">The class that was to be planned.</param>
    public static string WhatHelps(BenchPlanning planning, BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(planning);
        return planning.Changes.Count > 0
                ? $"One of these helps: {string.Join(" ", planning.Changes.Select(change => PlanChangeWords.Of(change, bench)))}"
            : planning.Notice is { } notice ? $"{Of(notice)} Give it more time, or set less aside."
            : "Give it more time, or take a bread out.";
    }

    /// <summary>
    /// By how much a class does not fit and because of what, as sentences with a space behind the last; empty where neither is known.
    /// </summary>
    /// <param name="conflict">What cannot be had together; null where that is not known.</param>
    /// <param name="missingMinutes">How many minutes more would be enough; null where that is not known.</param>
    /// <param name="bench">The class that was to be planned.</param>
    public static string Why(PlanConflict? conflict, int? missingMinutes, BenchClass bench)
    {
        var missing = missingMinutes is { } minutes ? string.Create(CultureInfo.InvariantCulture, $"It is {minutes} min short. ") : "";
        // Those that are worth naming most stand last, behind them all the period, of which the numbers speak already.
        var rules = conflict?.Rules.Where(rule => rule.Kind != RuleKind.Period).TakeLast(MostNamed).ToList() ?? [];
        if (rules.Count == 0 && conflict is not null)
            rules = [.. conflict.Rules];
        return rules.Count == 0
            ? missing
            : $"{missing}What stands in the way: {string.Join(' ', rules.Select(rule => RuleWords.Of(rule, bench)))} ";
    }
}
