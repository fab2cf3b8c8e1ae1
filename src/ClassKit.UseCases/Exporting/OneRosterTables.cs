using System.Globalization;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Counts;

namespace ClassKit.UseCases.Exporting;

/// <summary>
/// Grades as the tables of 1EdTech OneRoster 1.2, CSV binding: manifest, one line item for the set, a result for every student.
/// </summary>
/// <remarks>
/// The names and order of columns and the words for states are those of the standard as the open-source reader LongsightGroup/oneroster
/// holds packages against them (src/one-roster-csv-gradebook-schema.ts: "spec-defined headers in exact order"). In a bulk exchange
/// <c>status</c> and <c>dateLastModified</c> stay empty.
/// </remarks>
internal static class OneRosterTables
{
    /// <summary>Every table of the standard; all but ours are absent from this exchange.</summary>
    private static readonly string[] Tables =
    [
        "academicSessions",
        "categories",
        "classes",
        "classResources",
        "courses",
        "courseResources",
        "demographics",
        "enrollments",
        "lineItemLearningObjectiveIds",
        "lineItems",
        "lineItemScoreScales",
        "orgs",
        "resources",
        "resultLearningObjectiveIds",
        "results",
        "resultScoreScales",
        "roles",
        "scoreScales",
        "userProfiles",
        "userResources",
        "users",
    ];

    public static string Manifest(params IReadOnlyList<string> exchanged) =>
        CsvText.Of([
            ["propertyName", "value"],
            ["manifest.version", "1.0"],
            ["oneroster.version", "1.2"],
            .. Tables.Select(table => new[] { "file." + table, exchanged.Contains(table) ? "bulk" : "absent" }),
            ["source.systemName", "ClassKit"],
            ["source.systemCode", "classkit"],
        ]);

    public static string LineItems(ClassGrades grades, GradeExchange exchange) =>
        CsvText.Of(
            OneRosterLineItem.Columns,
            new OneRosterLineItem(
                LineItem(grades.Dealt),
                grades.Dealt.LessonTitle,
                exchange.Assigned,
                exchange.Due,
                grades.Students.Select(student => student.OutOf).DefaultIfEmpty().Max()
            )
            {
                Description = Counted.Of(grades.Dealt.Exercises.Count, "exercise"),
                Class = exchange.ClassId,
                Category = exchange.CategoryId,
                Session = exchange.SessionId,
                School = exchange.SchoolId,
            }.Row
        );

    public static string Results(DealtClass dealt, IEnumerable<StudentGrade> students, GradeExchange exchange) =>
        CsvText.Of([OneRosterResult.Columns, .. students.Select(student => Result(LineItem(dealt), student, exchange).Row)]);

    private static OneRosterResult Result(string lineItem, StudentGrade student, GradeExchange exchange)
    {
        var waits = student.Answers.Any(answer => answer.IsUndecided);
        return new(
            lineItem,
            student.Who.Id,
            exchange.ClassId,
            State(student, waits),
            IsScored(student) ? CsvText.Points(student.Points) : "",
            exchange.Scored
        )
        {
            IsIncomplete = waits,
            IsLate = student.Late is not null,
            IsMissing = student.CameBackEmpty || (student.Status == GradeStatus.Missing && !student.HasPoints),
        };
    }

    /// <summary>What came back as it was handed out is no work yet, as a term has it: nobody has said that it is handed in.</summary>
    private static bool IsScored(StudentGrade student) => student.HasPoints && !student.CameBackEmpty;

    private static string State(StudentGrade student, bool waits) =>
        (IsScored(student), waits) switch
        {
            (true, true) => "partially graded",
            (true, false) => "fully graded",
            _ => student.CameBackEmpty || student.Status == GradeStatus.Missing ? "not submitted" : "submitted",
        };

    private static string LineItem(DealtClass dealt) => string.Create(CultureInfo.InvariantCulture, $"{dealt.Lesson}-{dealt.Seed}");
}
