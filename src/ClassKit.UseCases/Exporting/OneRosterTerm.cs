using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Exporting;

/// <summary>A term as tables of 1EdTech OneRoster 1.2, CSV binding.</summary>
/// <remarks>
/// Names and order of columns, the words for states and the form <c>{from-to:grade}</c> of a scale are those that the open-source reader
/// LongsightGroup/oneroster holds packages of version 1.2 against ("spec-defined headers in exact order"). Weights are whole numbers there:
/// a category whose share is no whole percent has none.
/// </remarks>
internal sealed class OneRosterTerm(SchoolTerm term, TermExchange exchange)
{
    private static readonly string[] Common = ["sourcedId", "status", "dateLastModified"];

    private string Grade => exchange.SessionId + "-grade";

    private string ScaleId => exchange.SessionId + "-scale";

    public string Sessions() =>
        CsvText.Of(
            [.. Common, "title", "type", "startDate", "endDate", "parentSourcedId", "schoolYear"],
            // A school year is named by the year in which it ends; by the last day it ends in the summer.
            [
                exchange.SessionId,
                "",
                "",
                term.Title,
                "term",
                Day(exchange.Begins),
                Day(exchange.Ends),
                "",
                (exchange.Ends.Month > 7 ? exchange.Ends.Year + 1 : exchange.Ends.Year).ToString(CultureInfo.InvariantCulture),
            ]
        );

    public string Categories() =>
        CsvText.Of([
            [.. Common, "title", "weight"],
            .. term
                .Rule.Categories.Index()
                .Select(category =>
                    new[]
                    {
                        CategoryId(category.Index),
                        "",
                        "",
                        category.Item.Name,
                        Whole(AnswerUnit.Shown(AnswerUnit.Percent, category.Item.Weight)),
                    }
                ),
            // The grade has a category of its own, which weighs nothing: it is made of the others.
            [CategoryId(term.Rule.Categories.Count), "", "", term.Rule.Title, "0"],
        ]);

    public string LineItems() =>
        CsvText.Of([
            [
                .. Common,
                "title",
                "description",
                "assignDate",
                "dueDate",
                "classSourcedId",
                "categorySourcedId",
                "academicSessionSourcedId",
                "resultValueMin",
                "resultValueMax",
                "schoolSourcedId",
            ],
            .. term.Assignments.Select((work, at) => LineItem(WorkId(at), work.Title, CategoryId(CategoryOf(work)), work.OutOf, work.Due)),
            LineItem(Grade, term.Title, CategoryId(term.Rule.Categories.Count), 100, null),
        ]);

    public string Scale() =>
        CsvText.Of(
            [.. Common, "title", "type", "orgSourcedId", "courseSourcedId", "classSourcedId", "scoreScaleValue"],
            [
                ScaleId,
                "",
                "",
                term.Rule.Title,
                "percent",
                exchange.SchoolId,
                exchange.CourseId,
                exchange.ClassId,
                string.Join(',', term.Rule.Scale.Steps.Select(Step)),
            ]
        );

    public string ScaleOfGrade() =>
        CsvText.Of([.. Common, "title", "lineItemSourcedId", "scoreScaleSourcedId"], [Grade + "-scale", "", "", "", Grade, ScaleId]);

    /// <summary>
    /// The rows of the results, the header among them: of every student each work that stands for something, and the grade.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<string>> Results(IReadOnlyList<TermGrade> grades) =>
        [
            [
                .. Common,
                "lineItemSourcedId",
                "studentSourcedId",
                "scoreStatus",
                "score",
                "scoreDate",
                "comment",
                "textScore",
                "classSourcedId",
                "inProgress",
                "incomplete",
                "late",
                "missing",
            ],
            .. grades.SelectMany(grade =>
                term.Assignments.Select((work, at) => (At: at, Result: grade.Works.First(result => result.Assignment == work)))
                    .Where(work => !work.Result.IsOpen)
                    .Select(work => Result(work.At, grade, work.Result))
                    .Append(Result(grade))
            ),
        ];

    private string[] Result(int at, TermGrade grade, WorkResult work)
    {
        var mark = work.Counted?.Attempt.Mark;
        var state =
            work.Standing == Standing.Excused ? "exempt"
            : mark is null ? "not submitted"
            : "fully graded";
        var score =
            mark is not null && work.Share is { } share
                ? CsvText.Points(Math.Round(share * work.Assignment.OutOf, 2, MidpointRounding.AwayFromZero))
                : "";
        return Row(
            WorkId(at),
            grade,
            state,
            score,
            "",
            incomplete: false,
            late: mark is { Lateness: not Lateness.InTime },
            missing: mark is null && work.Standing != Standing.Excused
        );
    }

    private string[] Result(TermGrade grade) =>
        grade.Place is { } place
            ? Row(
                Grade,
                grade,
                grade.IsProvisional ? "partially graded" : "fully graded",
                CsvText.Points(grade.Rounded ?? 0),
                term.Rule.Scale.Steps[place].Grade,
                grade.IsProvisional,
                late: false,
                missing: false
            )
            : Row(Grade, grade, "not submitted", "", "", incomplete: true, late: false, missing: false);

    private string[] Row(
        string lineItem,
        TermGrade grade,
        string state,
        string score,
        string text,
        bool incomplete,
        bool late,
        bool missing
    ) =>
        [
            $"{lineItem}-{grade.Student.Id}",
            "",
            "",
            lineItem,
            grade.Student.Id,
            state,
            score,
            Day(exchange.Ends),
            "",
            text,
            exchange.ClassId,
            "false",
            Word(incomplete),
            Word(late),
            Word(missing),
        ];

    /// <summary>What nobody said a day of was set when the term began and is due when it ends; nothing is due before it was set.</summary>
    private string[] LineItem(string id, string title, string category, decimal outOf, DateOnly? due) =>
        [
            id,
            "",
            "",
            title,
            "",
            Day(due < exchange.Begins ? due.Value : exchange.Begins),
            Day(due ?? exchange.Ends),
            exchange.ClassId,
            category,
            exchange.SessionId,
            "0",
            CsvText.Points(outOf),
            exchange.SchoolId,
        ];

    /// <summary>
    /// A step of the scale up to where the next begins, in the standard's own form; signs of that form are taken out of grades.
    /// </summary>
    private string Step(ScaleStep step, int at)
    {
        var to = at + 1 < term.Rule.Scale.Steps.Count ? term.Rule.Scale.Steps[at + 1].From : 100;
        return $"{{{CsvText.Points(step.From)}-{CsvText.Points(to)}:{string.Concat(step.Grade.Where(sign => !"{}:,".Contains(sign, StringComparison.Ordinal)))}}}";
    }

    private int CategoryOf(Assignment work) => term.Rule.Categories.Index().First(category => category.Item.Name == work.Category).Index;

    private string CategoryId(int at) => string.Create(CultureInfo.InvariantCulture, $"{exchange.SessionId}-category-{at + 1}");

    private string WorkId(int at) => string.Create(CultureInfo.InvariantCulture, $"{exchange.SessionId}-work-{at + 1}");

    private static string Whole(decimal percent) => percent % 1 == 0 ? CsvText.Points(percent) : "";

    private static string Word(bool yes) => yes ? "true" : "false";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
