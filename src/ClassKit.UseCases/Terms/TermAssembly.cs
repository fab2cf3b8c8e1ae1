using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Cohorts;
using ClassKit.Notes;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Work;

namespace ClassKit.UseCases.Terms;

/// <summary>Puts a term together from its description and from what lies in graded folders.</summary>
internal static class TermAssembly
{
    public static Reading<WeighRequest> Of(TermPlan plan) =>
        Of(plan, (work, problems, notes) => GradedWork.Read(work, plan, problems, notes));

    /// <summary>The same with grades that are at hand.</summary>
    public static Reading<WeighRequest> Of(TermPlan plan, Func<PlannedWork, List<Diagnostic>, List<Note>, GradedWork> graded)
    {
        var (problems, notes) = (new List<Diagnostic>(), new List<Note>());
        List<(Assignment Assignment, IReadOnlyList<Attempt> Attempts)> works = [];
        foreach (var work in plan.Works)
        {
            if (NotMarkedThrough(plan, work) is { Count: > 0 } open)
                notes.Add(new Note.NotMarkedThrough(work.Title, open));
            var sets = graded(work, problems, notes);
            List<Attempt> found =
            [
                .. sets.Attempts,
                .. work
                    .Bench.Index()
                    .SelectMany(sat =>
                        sat.Item.Marks(plan.Rule.SecondMarker)
                            .Select(marked => new Attempt(marked.Student, work.Title, sat.Index + 1, marked.Mark))
                    ),
            ];
            if (MarkedAndExcused(plan, work, found) is { Count: > 0 } both)
                notes.Add(new Note.MarkedAndExcused(work.Title, both));
            works.Add(
                (
                    new(work.Title, work.Title, work.Kind, work.Category, work.OutOf ?? sets.OutOf) { Due = sets.Due },
                    Excusals.With(plan, work, sets.Lessons, WithTyped(found, work, problems))
                )
            );
        }
        return problems.Count > 0
            ? new(null, problems)
            : new(
                new(
                    new(
                        plan.Title,
                        plan.Class,
                        plan.Rule,
                        [.. works.Select(work => work.Assignment)],
                        [.. works.SelectMany(work => work.Attempts)]
                    ),
                    [
                        .. plan.Works.SelectMany(work =>
                            work.Bench.Where(marking => marking.Second is not null).Select(marking => (work.Title, marking))
                        ),
                    ],
                    notes
                ),
                []
            );
    }

    private static List<Student> NotMarkedThrough(TermPlan plan, PlannedWork work) =>
        [
            .. plan.Class.Students.Where(student =>
                work.Bench.Any(sat => sat.First.Begun.ContainsKey(student.Id) || sat.Second?.Begun.ContainsKey(student.Id) == true)
            ),
        ];

    private static List<Student> MarkedAndExcused(TermPlan plan, PlannedWork work, List<Attempt> found) =>
        [
            .. plan.Class.Students.Where(student =>
                work.Typed.Any(typed =>
                    typed.Student == student.Id
                    && typed.Mark.State == MarkState.Excused
                    && found.Exists(attempt => attempt.Student == typed.Student && attempt.Sitting == typed.Sitting)
                )
            ),
        ];

    /// <summary>A word excuses also who has a mark, which is told; every other word beside a mark contradicts it.</summary>
    private static List<Attempt> WithTyped(List<Attempt> found, PlannedWork work, List<Diagnostic> problems)
    {
        foreach (var typed in work.Typed)
        {
            var at = found.FindIndex(attempt => attempt.Student == typed.Student && attempt.Sitting == typed.Sitting);
            var attempt = new Attempt(typed.Student, work.Title, typed.Sitting, typed.Mark);
            if (at < 0)
                found.Add(attempt);
            else if (typed.Mark.State == MarkState.Excused)
                found[at] = attempt;
            else
                problems.Add(
                    new(
                        typed.File,
                        typed.Line,
                        $"`{typed.Student}` has a mark for `{work.Title}` elsewhere, and here is another word",
                        "Take the word away, or write `excused` if the mark is not to count."
                    )
                );
        }
        return found;
    }
}
