using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.RuleOfThumb;
using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Packs;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;
using ClassKit.Wording.Benches;

namespace ClassKit.UseCases.Checking;

/// <summary>Whether a lesson fits the period of a class that it was checked with, and its series can be compared there.</summary>
internal static class LessonFit
{
    /// <summary>What stands in the way; null if the lesson fits one of the classes with its series treated alike, or where no class can be planned.</summary>
    /// <param name="lessonPath">The lesson's file.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="classes">Those that it was checked with; none for one of the usual size that has as long as the lesson takes.</param>
    /// <param name="run">The run.</param>
    public static Diagnostic? Of(string lessonPath, Lesson lesson, IReadOnlyList<ClassProfile> classes, Run run)
    {
        Diagnostic? first = null;
        foreach (var profile in classes.DefaultIfEmpty(UsualClass.Profile with { PeriodMinutes = lesson.PeriodMinutes }))
        {
            if (!ComputedPack.Build(lesson, profile).TryGet(out var computed, out var why))
            {
                first ??= new(lessonPath, null, $"For {profile.Name}: {why.Message.TrimEnd('.')}", why.Remedy) { Weight = Weight.Doubtful };
                continue;
            }
            var bench = BenchClasses.Of(computed.Lesson, profile);
            // A rule of thumb finds most plans at once; only where it finds none, or where a pack's own plan is to be looked at, a search is worth its time.
            if (BenchSeries.Of(bench).Count == 0 && Enumerable.Range(1, bench.Teams).Any(shifts => GreedyPlanner.Plan(bench, shifts) is not null)) return null;
            var planned = ClassPlanning.Plan(computed, run);
            if (planned is { Bench: { Plan: not null, Unlike.Count: 0 }, Cut: null }) return null;
            if (planned is { Bench: { Plan: { } plan, Unlike: var unlike }, Cut: null })
            {
                first ??= new(lessonPath, null, $"For {profile.Name}: {SeriesDifferenceWords.Of(unlike, plan.Class).TrimEnd('.')}", "Bake less beside the series, count more oven places, or give it more time; or leave it: guide and bench plan say the same.") { Weight = Weight.Doubtful };
                continue;
            }
            first ??= new(
                lessonPath, null, $"The lesson does not fit the {profile.PeriodMinutes} min of {profile.Name}{(planned.Cut is null ? "" : ", and a pack is made with less of it")}. {Why(planned, bench)}".TrimEnd('.', ' '),
                planned.Cut is { } cut ? PlanChangeWords.Of(cut.Change, cut.Bench) : WhatHelps(planned.Bench, bench))
            {
                Weight = Weight.Doubtful,
            };
        }
        return first;
    }

    private static string Why(PlannedPack planned, BenchClass bench) => planned.Cut is { } cut
        ? PlanNoticeWords.Why(cut.Conflict, cut.MissingMinutes, cut.Bench)
        : PlanNoticeWords.Why(planned.Bench.Conflict, planned.Bench.MissingMinutes, bench);

    private static string WhatHelps(BenchPlanning planning, BenchClass bench) =>
        planning.Changes.Count > 0 ? $"One of these helps: {string.Join(" ", planning.Changes.Select(change => PlanChangeWords.Of(change, bench)))}"
        : planning.Notice is { } notice ? $"{PlanNoticeWords.Of(notice)} Give it more time, or set less aside."
        : "Give it more time, or take a bread out.";
}
