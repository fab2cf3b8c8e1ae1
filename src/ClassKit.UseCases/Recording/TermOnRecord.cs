using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.Records.Classes;
using ClassKit.Records.Marks;
using ClassKit.Records.Storage;
using ClassKit.Records.Terms;
using ClassKit.Terms.Bench;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Work;
using ClassKit.UseCases.Terms;

namespace ClassKit.UseCases.Recording;

/// <summary>A term whose class, rule and works are written down, and whose marks are those on record.</summary>
public static class TermOnRecord
{
    /// <summary>The request to weigh it, or why it cannot be.</summary>
    /// <param name="path">The description of the term.</param>
    /// <param name="record">The record.</param>
    /// <param name="named">What the class is called; null for what its profile calls it.</param>
    public static Reading<WeighRequest> Read(string path, TeachingRecord record, string? named)
    {
        ArgumentNullException.ThrowIfNull(record);
        var plan = TermReader.Read(path);
        return plan.Succeeded
            ? RecordTroubles.Told(() => record.Read(session => Of(plan.Model, session, named ?? plan.Model.Class.Cohort)))
            : new(null, plan.Problems);
    }

    /// <summary>The term as it is on record, or null.</summary>
    internal static RecordedTerm? Find(RecordSession session, string named, string title) =>
        ClassRegister.Find(session, named) is { } found ? TermRegister.Find(session, found, title) : null;

    private static Reading<WeighRequest> Of(TermPlan whole, RecordSession session, string named)
    {
        var plan = StillErased.Without(whole, StillErased.Among(session, whole.Class.Students.Select(student => student.Id)));
        if (Find(session, named, plan.Title) is not { } term)
            return new(
                null,
                [
                    new(
                        plan.Path,
                        null,
                        $"The record has no term `{plan.Title}` of a class `{named}`",
                        "Enter the term first, or name the class as the record does."
                    ),
                ]
            );
        var recorded = TermRegister.Works(session, term).ToDictionary(work => work.Assignment.Title);
        var notes = new List<Note>();
        List<(Assignment Assignment, IReadOnlyList<Attempt> Attempts)> works = [];
        List<(string, BenchMarking)> twice = [];
        foreach (var planned in plan.Works)
        {
            var work = recorded.GetValueOrDefault(planned.Title);
            var sat = GradedWork.Of(planned, plan, work is null ? [] : Sittings(session, work), notes);
            var graded = sat.Attempts;
            var bench = work is null ? [] : BenchRegister.Of(session, work);
            twice.AddRange(bench.Where(marked => marked.Marking.Second is not null).Select(marked => (planned.Title, marked.Marking)));
            List<Attempt> found =
            [
                .. graded,
                .. bench.SelectMany(marked =>
                    marked
                        .Marking.Marks(plan.Rule.SecondMarker)
                        .Select(mark => new Attempt(mark.Student, planned.Title, marked.Sitting, mark.Mark))
                ),
            ];
            if (work is not null)
                Type(found, TypedMarks.Of(session, work));
            found = Excusals.With(plan, planned, sat.Lessons, found);
            works.Add(
                (
                    new(
                        planned.Title,
                        planned.Title,
                        planned.Kind,
                        planned.Category,
                        planned.OutOf ?? graded.Select(attempt => (decimal?)attempt.Mark.OutOf).Append(work?.Assignment.OutOf).Max()
                    )
                    {
                        Due = sat.Due ?? work?.Due,
                    },
                    found
                )
            );
        }
        var students = plan.Class.Students.Select(student => student.Id).ToHashSet();
        return new(
            new(
                new(
                    plan.Title,
                    plan.Class,
                    plan.Rule,
                    [.. works.Select(work => work.Assignment)],
                    [.. works.SelectMany(work => work.Attempts).Where(attempt => students.Contains(attempt.Student))]
                ),
                twice,
                notes
            ),
            []
        );
    }

    /// <summary>A typed word takes the place of a mark: who typed it had the mark before them.</summary>
    private static void Type(List<Attempt> found, IReadOnlyList<Attempt> typed)
    {
        foreach (var attempt in typed)
        {
            found.RemoveAll(other => other.Student == attempt.Student && other.Sitting == attempt.Sitting);
            found.Add(attempt);
        }
    }

    private static IReadOnlyList<(int, ClassGrades)> Sittings(RecordSession session, RecordedWork work) =>
        [
            .. TermRegister
                .Sittings(session, work)
                .Select(sat => (sat.Sitting, RecordedGrades.Of(session, sat.Deal)))
                .Where(sat => sat.Item2 is not null)
                .Select(sat => (sat.Sitting, sat.Item2!)),
        ];
}
