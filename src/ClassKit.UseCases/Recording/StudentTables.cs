using System.Globalization;
using ClassKit.Grading.Results;
using ClassKit.Records.Storage;
using ClassKit.Terms.Marks;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Terms;

namespace ClassKit.UseCases.Recording;

/// <summary>
/// What the record holds of a student as tables that open anywhere. A table of the record that names a student has one here; answers, files
/// and typed points are those of the grading that stands, points are of every grading. What others are named in, such as whom a file is
/// like, stays out.
/// </summary>
internal static class StudentTables
{
    public const string Summary = "works.csv";

    private static readonly string[] ByWhom = ["on", "by", "why"];

    public static IEnumerable<OutputFile> Of(StudentFile file) =>
        [
            Table(
                "student.csv",
                ["id", "name", "email", "class", "since", "until"],
                file.Enrolments.Select(one =>
                    new[]
                    {
                        file.Student.Id,
                        file.Student.Name,
                        file.Student.Email ?? "",
                        one.Class.Name,
                        Day(one.Since),
                        one.Until is { } until ? Day(until) : "",
                    }
                )
            ),
            Table(
                Summary,
                ["deal", "work", "grading", "status", "points", "out of", .. ByWhom],
                file.Gradings.Select(one =>
                    new[]
                    {
                        one.Grade.Deal,
                        one.Grade.Title,
                        Number(one.Number),
                        one.Grade.Status,
                        Points(one.Grade.Points),
                        Points(one.Grade.OutOf),
                    }.Concat(By(one.Change))
                )
            ),
            Table(
                "numbers.csv",
                ["deal", "exercise", "given", "value"],
                file.Works.SelectMany(work =>
                    (work.Dealt?.Variants ?? []).SelectMany(variant =>
                        variant.Givens.Select(given =>
                            new[] { work.Deal.Identity!.Code, variant.Exercise.Id, given.Key, Exact(given.Value) }
                        )
                    )
                )
            ),
            Table(
                "answers.csv",
                ["deal", "exercise", "part", "outcome", "points", "out of", "value", "formula", "said", "as graded", "corrected because"],
                file.Works.SelectMany(work => (work.Grade?.Answers ?? []).Select(answer => Answer(work.Deal.Identity!.Code, answer)))
            ),
            Table(
                "files.csv",
                ["deal", "file", "sha256"],
                file.Works.SelectMany(work => work.Files.Select(one => new[] { work.Deal.Identity!.Code, one.File, one.Digest ?? "" }))
            ),
            Table(
                "typed-points.csv",
                ["deal", "part", "file", "cell", "typed"],
                file.Works.SelectMany(work =>
                    work.Typed.Select(typed => new[] { work.Deal.Identity!.Code, typed.Asked, typed.File, typed.Cell, typed.Typed })
                )
            ),
            Table(
                "marks.csv",
                ["class", "term", "work", "sitting", "mark", "points", "out of", "late", .. ByWhom],
                file.Marks.Select(one =>
                    Mark(one.Attempt.Mark)
                        .Prepend(Number(one.Attempt.Sitting))
                        .Prepend(one.Attempt.Assignment)
                        .Prepend(one.Term)
                        .Prepend(one.Class)
                        .Concat(By(one.Change))
                )
            ),
            Table(
                "bench-marks.csv",
                ["class", "term", "work", "sitting", "marker", "criterion", "level", "comment", .. ByWhom],
                file.Bench.SelectMany(one =>
                    one.Levels.Select(level =>
                        new[]
                        {
                            one.Class,
                            one.Term,
                            one.Work,
                            Number(one.Sitting),
                            one.Marker,
                            level.Criterion,
                            level.Level ?? "",
                            one.Comment ?? "",
                        }.Concat(By(one.Change))
                    )
                )
            ),
            Table(
                "grades-given-out.csv",
                ["class", "term", "time", "grade", "percent", "rounded", "may change", "work", "share", .. ByWhom],
                file.GivenOut.SelectMany(one =>
                    one.Grade.Works.Select(work =>
                        new[]
                        {
                            one.Class,
                            one.Term,
                            Number(one.Number),
                            one.Grade.Grade ?? "",
                            Exact(one.Grade.Percent),
                            Exact(one.Grade.Rounded),
                            one.Grade.IsProvisional ? "yes" : "",
                            work.Title,
                            Exact(work.Share),
                        }.Concat(By(one.Change))
                    )
                )
            ),
            Table(
                "arrangements.csv",
                ["class", "what", "since", "until"],
                file.Arrangements.Select(one =>
                    new[] { one.Class.Name, one.What, Day(one.Since), one.Until is { } until ? Day(until) : "" }
                )
            ),
            Table(
                "changes.csv",
                ["at", "who", "what", "about", "why", "before", "after"],
                file.Changes.SelectMany(change =>
                    change.Rows.Select(row =>
                        new[]
                        {
                            At(change.Change),
                            change.Change.Who,
                            change.Change.What,
                            change.Change.About,
                            change.Change.Why,
                            row.Before,
                            row.After ?? "",
                        }
                    )
                )
            ),
        ];

    private static OutputFile Table(string name, IReadOnlyList<string> head, IEnumerable<IEnumerable<string>> rows) =>
        OutputFile.OfText(name, () => CsvText.Of(rows.Prepend(head)));

    private static string[] Answer(string deal, AnswerGrade answer) =>
        [
            deal,
            answer.Exercise.Id,
            answer.Part.Id,
            OutcomeWords.Of(answer.Outcome),
            Points(answer.Points),
            Points(answer.OutOf),
            Convert.ToString(PlainValue.Of(answer.Value), CultureInfo.InvariantCulture) ?? "",
            answer.Formula ?? "",
            FindingWords.Of(answer),
            Points(answer.Correction?.AsGraded),
            answer.Correction?.Reason ?? "",
        ];

    private static string[] Mark(Mark mark) =>
        mark.State == MarkState.Marked
            ? [WorkWords.Of(mark), Exact(mark.Points), Exact(mark.OutOf), mark.Lateness == Lateness.InTime ? "" : "yes"]
            : [WorkWords.Of(mark), "", "", ""];

    private static string[] By(Change change) => [At(change), change.Who, change.Why];

    private static string Points(decimal? points) => points is { } known ? CsvText.Points(known) : "";

    private static string Exact(decimal? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string At(Change change) => change.At.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
