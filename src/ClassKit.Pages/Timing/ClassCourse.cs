using ClassKit.BenchPlans.Plans;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;
using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Sensory;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Timing;

/// <summary>What is shown and said, at the minutes of the bench plan.</summary>
internal static class ClassCourse
{
    /// <summary>In order of time; without a plan in the lesson's own order, demonstrations before the steps that they belong to.</summary>
    public static IReadOnlyList<CourseEntry> Of(LessonPack pack)
    {
        var plan = pack.Bench.Plan;
        var points = pack.Lesson.TalkingPoints.SelectMany(point =>
            Shown(pack.Lesson, point).Select(shown => Entry(pack, shown)).Append(Entry(pack, point))
        );
        var free = pack
            .Lesson.Demonstrations.Where(shown => !pack.Lesson.TalkingPoints.Any(point => Belongs(shown, point)))
            .Select(shown => Entry(pack, shown));
        var all = points.Concat(free).ToList();
        return plan is null ? all : [.. all.OrderBy(entry => entry.From ?? 0)];
    }

    private static IEnumerable<LessonDemonstration> Shown(Lesson lesson, TalkingPoint point) =>
        lesson.Demonstrations.Where(shown => Belongs(shown, point));

    private static bool Belongs(LessonDemonstration shown, TalkingPoint point) =>
        point.Moment == ClassMoment.Step && shown.FormulaId == point.FormulaId && shown.StepName == point.StepName;

    private static CourseEntry Entry(LessonPack pack, LessonDemonstration shown)
    {
        var planned = pack.Bench.Plan?.Demonstrations.FirstOrDefault(each => each.Demonstration.Name == shown.Name);
        return new(
            planned?.Start,
            planned?.End,
            $"Show: {shown.Name}",
            $"{pack.Words(shown.Text)} {string.Join(" ", StandingCautions.For(shown).Skip(1).Select(caution => $"*{caution.Title}:* {pack.Words(caution.Text)}"))}".TrimEnd(),
            ""
        );
    }

    private static CourseEntry Entry(LessonPack pack, TalkingPoint point)
    {
        var (from, until) = pack.Bench.Plan is { } plan ? When(point, plan) : (null, null);
        return new(from, until, Heading(pack.Lesson, point), pack.Words(point.What) + Blind(pack, point), pack.Words(point.Say));
    }

    /// <summary>When the class tastes blind, where it has the time for it.</summary>
    private static string Blind(LessonPack pack, TalkingPoint point) =>
        point.Moment == ClassMoment.Tasting
        && pack.Bench.Plan is { } plan
        && TastingCourse.Of(plan.Class.Time.ReadyBy, plan.Class.Time.TastingMinutes) is { BlindFrom: { } blind } course
            ? $" Blind tasting from {KitchenText.Clock(blind, pack.Class.Start)} to {KitchenText.Clock(course.TalkFrom, pack.Class.Start)}: plates are laid before."
            : "";

    private static string Heading(Lesson lesson, TalkingPoint point) =>
        point.Moment switch
        {
            ClassMoment.Begin => "Begin",
            ClassMoment.Step =>
                $"{lesson.Formulas.First(formula => formula.Formula.Id == point.FormulaId).Formula.Title}: {point.StepName}",
            ClassMoment.Tasting => "Tasting",
            ClassMoment.CleanUp => "Clean up",
        };

    private static (int? From, int? Until) When(TalkingPoint point, BenchPlan plan)
    {
        var time = plan.Class.Time;
        return point.Moment switch
        {
            ClassMoment.Begin => (0, time.WorkFrom),
            ClassMoment.Step => First(point, plan) is { } step ? (step.Start, step.End) : (null, null),
            ClassMoment.Tasting => (time.ReadyBy, time.ReadyBy + time.TastingMinutes),
            ClassMoment.CleanUp => (time.ReadyBy + time.TastingMinutes, time.DoneBy),
        };
    }

    /// <summary>The first of all loads to reach the step; null if it is done before the class.</summary>
    private static PlannedStep? First(TalkingPoint point, BenchPlan plan) =>
        plan
            .Steps.Where(step =>
                plan.Class.Breads[step.Load.Bread].Id == point.FormulaId
                && plan.Class.Breads[step.Load.Bread].Steps[step.Step].Name == point.StepName
            )
            .MinBy(step => step.Start);
}
