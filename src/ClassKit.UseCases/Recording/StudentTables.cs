using System.Globalization;
using ClassKit.Grading.Results;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Answers;

namespace ClassKit.UseCases.Recording;

/// <summary>What the record holds of a student as tables that open anywhere.</summary>
internal static class StudentTables
{
    public const string Summary = "works.csv";

    public static IEnumerable<OutputFile> Of(StudentFile file)
    {
        yield return OutputFile.OfText("student.csv", () => CsvText.Of(
        [
            ["id", "name", "email", "class", "since", "until"],
            .. file.Enrolments.Select(one => new[] { file.Student.Id, file.Student.Name, file.Student.Email ?? "", one.Class.Name, Day(one.Since), one.Until is { } until ? Day(until) : "" }),
        ]));
        yield return OutputFile.OfText(Summary, () => CsvText.Of(
        [
            ["deal", "work", "status", "points", "out of"],
            .. file.Standing.Select(standing => new[] { standing.Deal, standing.Title, standing.Status, Points(standing.Points), Points(standing.OutOf) }),
        ]));
        yield return OutputFile.OfText("answers.csv", () => CsvText.Of(
        [
            ["deal", "exercise", "part", "outcome", "points", "out of", "value", "formula", "said"],
            .. file.Works.SelectMany(work => (work.Grade?.Answers ?? []).Select(answer => Answer(work.Deal.Identity!.Code, answer))),
        ]));
        yield return OutputFile.OfText("arrangements.csv", () => CsvText.Of(
        [
            ["class", "what", "since", "until"],
            .. file.Arrangements.Select(one => new[] { one.Class.Name, one.What, Day(one.Since), one.Until is { } until ? Day(until) : "" }),
        ]));
        yield return OutputFile.OfText("changes.csv", () => CsvText.Of(
        [
            ["at", "who", "what", "about", "why", "before", "after"],
            .. file.Changes.SelectMany(change => change.Rows.Select(row => new[] { At(change.Change), change.Change.Who, change.Change.What, change.Change.About, change.Change.Why, row.Before, row.After ?? "" })),
        ]));
    }

    private static string[] Answer(string deal, AnswerGrade answer) =>
    [
        deal, answer.Exercise.Id, answer.Part.Id, OutcomeWords.Of(answer.Outcome), Points(answer.Points), Points(answer.OutOf),
        Convert.ToString(PlainValue.Of(answer.Value), CultureInfo.InvariantCulture) ?? "", answer.Formula ?? "", FindingWords.Of(answer),
    ];

    private static string Points(decimal? points) => points is { } known ? CsvText.Points(known) : "";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string At(Change change) => change.At.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
