using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
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
    /// <summary>
    /// What stands in the way; null if the lesson fits one of the classes with its series treated alike, or where no class can be planned.
    /// </summary>
    /// <remarks>
    /// A rule of thumb finds most plans at once. Only where it finds none for any of the classes a search is worth its time, and only of
    /// the first class is it asked what would help.
    /// </remarks>
    /// <param name="lessonPath">The lesson's file.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="classes">Those that it was checked with; none for one of the usual size that has as long as the lesson takes.</param>
    /// <param name="run">The run.</param>
    public static Diagnostic? Of(string lessonPath, Lesson lesson, IReadOnlyList<ClassProfile> classes, Run run)
    {
        Diagnostic? refused = null;
        List<(ClassProfile Class, BenchClass Bench)> benches = [];
        foreach (var profile in classes.DefaultIfEmpty(UsualClass.Profile with { PeriodMinutes = lesson.PeriodMinutes }))
        {
            if (ComputedPack.Build(lesson, profile).TryGet(out var computed, out var why))
                benches.Add((profile, BenchClasses.Of(computed.Lesson, profile)));
            else
                refused ??= Doubt(lessonPath, $"For {profile.Name}: {why.Message.TrimEnd('.')}", why.Remedy);
        }
        if (benches.Exists(each => FitsAtOnce(each.Bench)))
            return null;
        Diagnostic? unlike = null;
        List<(ClassProfile Class, BenchClass Bench)> without = [];
        foreach (var (profile, bench) in benches)
        {
            if (ClassPlanning.Fit(bench, run) is not { } plan)
                without.Add((profile, bench));
            else if (SeriesDifferences.In(plan) is not { Count: > 0 } differences)
                return null;
            else
                unlike ??= Doubt(
                    lessonPath,
                    $"For {profile.Name}: {SeriesDifferenceWords.Of(differences, plan.Class).TrimEnd('.')}",
                    "Bake less beside the series, count more oven places, or give it more time; or leave it: guide and bench plan say the same."
                );
        }
        return refused ?? unlike ?? (without.Count == 0 ? null : DoesNotFit(lessonPath, without[0].Class, without[0].Bench, run));
    }

    private static bool FitsAtOnce(BenchClass bench) => GreedyPlanner.Plans(bench).Any(plan => SeriesDifferences.In(plan).Count == 0);

    private static Diagnostic DoesNotFit(string lessonPath, ClassProfile profile, BenchClass bench, Run run)
    {
        var (planning, cut) = ClassPlanning.WhyNot(bench, run);
        return Doubt(
            lessonPath,
            $"The lesson does not fit the {profile.PeriodMinutes} min of {profile.Name}{(cut is null ? "" : ", and a pack is made with less of it")}. {PlanNoticeWords.Why(planning.Conflict, planning.MissingMinutes, bench)}".TrimEnd(
                '.',
                ' '
            ),
            cut is not null ? PlanChangeWords.Of(cut, bench) : PlanNoticeWords.WhatHelps(planning, bench)
        );
    }

    private static Diagnostic Doubt(string lessonPath, string found, string remedy) =>
        new(lessonPath, null, found, remedy) { Weight = Weight.Doubtful };
}
