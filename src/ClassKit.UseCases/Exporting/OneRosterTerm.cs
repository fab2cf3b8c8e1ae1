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
    private string Grade => exchange.SessionId + "-grade";

    private string ScaleId => exchange.SessionId + "-scale";

    public string Sessions() =>
        CsvText.Of(
            [.. OneRosterColumns.Common, "title", "type", "startDate", "endDate", "parentSourcedId", "schoolYear"],
            // A school year is named by the year in which it ends; by the last day it ends in the summer.
            [
                exchange.SessionId,
                "",
                "",
                term.Title,
                "term",
                OneRosterColumns.Of(exchange.Begins),
                OneRosterColumns.Of(exchange.Ends),
                "",
                (exchange.Ends.Month > 7 ? exchange.Ends.Year + 1 : exchange.Ends.Year).ToString(CultureInfo.InvariantCulture),
            ]
        );

    public string Categories() =>
        CsvText.Of([
            [.. OneRosterColumns.Common, "title", "weight"],
            .. term
                .Rule.Categories.Index()
                .Select(category =>
                    new[] { CategoryId(category.Index), "", "", category.Item.Name, Whole(Unit.Percent.Shown(category.Item.Weight)) }
                ),
            // The grade has a category of its own, which weighs nothing: it is made of the others.
            [CategoryId(term.Rule.Categories.Count), "", "", term.Rule.Title, "0"],
        ]);

    public string LineItems() =>
        CsvText.Of([
            OneRosterLineItem.Columns,
            .. Told.Select(work =>
                LineItem(WorkId(work.At), work.Item.Title, CategoryId(CategoryOf(work.Item)), work.OutOf, work.Item.Due)
            ),
            LineItem(Grade, term.Title, CategoryId(term.Rule.Categories.Count), 100, null),
        ]);

    public string Scale() =>
        CsvText.Of(
            [.. OneRosterColumns.Common, "title", "type", "orgSourcedId", "courseSourcedId", "classSourcedId", "scoreScaleValue"],
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
        CsvText.Of(
            [.. OneRosterColumns.Common, "title", "lineItemSourcedId", "scoreScaleSourcedId"],
            [Grade + "-scale", "", "", "", Grade, ScaleId]
        );

    /// <summary>
    /// The rows of the results, the header among them: of every student each work that stands for something, and the grade.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<string>> Results(IReadOnlyList<TermGrade> grades) =>
        [
            OneRosterResult.Columns,
            .. grades.SelectMany(grade =>
                Told.Select(work => (work.At, work.OutOf, Result: grade.Works.First(result => result.Assignment == work.Item)))
                    .Where(work => !work.Result.IsOpen)
                    .Select(work => Result(work.At, work.OutOf, grade, work.Result))
                    .Append(Result(grade))
                    .Select(result => result.Row)
            ),
        ];

    /// <summary>The works that can be told: of a line item the points possible must be known.</summary>
    private IEnumerable<(int At, Assignment Item, decimal OutOf)> Told =>
        term.Assignments.Index().Where(work => work.Item.OutOf is not null).Select(work => (work.Index, work.Item, work.Item.OutOf!.Value));

    private OneRosterResult Result(int at, decimal outOf, TermGrade grade, WorkResult work)
    {
        var mark = work.Counted?.Attempt.Mark;
        var state =
            work.Standing == Standing.Excused ? "exempt"
            : mark is null ? "not submitted"
            : work.Undecided > 0 ? "partially graded"
            : "fully graded";
        var score =
            mark is not null && work.Share is { } share ? CsvText.Points(Math.Round(share * outOf, 2, MidpointRounding.AwayFromZero)) : "";
        return Of(WorkId(at), grade, state, score) with
        {
            IsIncomplete = work.Undecided > 0,
            IsLate = mark is { Lateness: not Lateness.InTime },
            IsMissing = mark is null && work.Standing != Standing.Excused,
        };
    }

    private OneRosterResult Result(TermGrade grade) =>
        grade.Place is { } place
            ? Of(Grade, grade, grade.IsProvisional ? "partially graded" : "fully graded", CsvText.Points(grade.Rounded ?? 0)) with
            {
                Text = term.Rule.Scale.Steps[place].Grade,
                IsIncomplete = grade.IsProvisional,
            }
            : Of(Grade, grade, "not submitted", "") with
            {
                IsIncomplete = true,
            };

    private OneRosterResult Of(string lineItem, TermGrade grade, string state, string score) =>
        new(lineItem, grade.Student.Id, exchange.ClassId, state, score, exchange.Ends);

    /// <summary>What nobody said a day of was set when the term began and is due when it ends; nothing is due before it was set.</summary>
    private string[] LineItem(string id, string title, string category, decimal outOf, DateOnly? due) =>
        new OneRosterLineItem(id, title, due < exchange.Begins ? due.Value : exchange.Begins, due ?? exchange.Ends, outOf)
        {
            Class = exchange.ClassId,
            Category = category,
            Session = exchange.SessionId,
            School = exchange.SchoolId,
        }.Row;

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
}
