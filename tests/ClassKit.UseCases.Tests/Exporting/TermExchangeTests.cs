using ClassKit.Terms.Grades;
using ClassKit.UseCases.Exporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Terms;
using ClassKit.UseCases.Touring;

namespace ClassKit.UseCases.Tests.Exporting;

/// <summary>
/// A term as tables of OneRoster 1.2. Headers and vocabulary: the open-source reader LongsightGroup/oneroster,
/// packages/…/one-roster-csv-gradebook-schema.ts, "spec-defined headers in exact order".
/// </summary>
public class TermExchangeTests
{
    private static readonly string Path = System.IO.Path.Combine(
        DemoMaterial.Find(AppContext.BaseDirectory)!.Root,
        "demo-cohort",
        "term",
        "term.md"
    );

    private static readonly TermExchange Exchange = new("school-1", "course-1", "class-1", "autumn", new(2026, 9, 1), new(2026, 12, 18));

    private static readonly WeighRequest Term = WeighTerm.Read(Path).Model!;

    private static readonly Dictionary<string, IReadOnlyList<IReadOnlyList<string>>> Tables = ExportTerm
        .Run(new(Term.Term, Exchange), Run.Unwatched)
        .Model!.Files.ToDictionary(
            file => file.Name,
            file => (IReadOnlyList<IReadOnlyList<string>>)[.. CsvText.Rows(new MemoryStream(System.Text.Encoding.UTF8.GetBytes(file.Text)))]
        );

    [Theory]
    [InlineData("academicSessions.csv", "sourcedId,status,dateLastModified,title,type,startDate,endDate,parentSourcedId,schoolYear")]
    [InlineData("categories.csv", "sourcedId,status,dateLastModified,title,weight")]
    [InlineData(
        "lineItems.csv",
        "sourcedId,status,dateLastModified,title,description,assignDate,dueDate,classSourcedId,categorySourcedId,academicSessionSourcedId,resultValueMin,resultValueMax,schoolSourcedId"
    )]
    [InlineData(
        "results.csv",
        "sourcedId,status,dateLastModified,lineItemSourcedId,studentSourcedId,scoreStatus,score,scoreDate,comment,textScore,classSourcedId,inProgress,incomplete,late,missing"
    )]
    [InlineData(
        "scoreScales.csv",
        "sourcedId,status,dateLastModified,title,type,orgSourcedId,courseSourcedId,classSourcedId,scoreScaleValue"
    )]
    [InlineData("lineItemScoreScales.csv", "sourcedId,status,dateLastModified,title,lineItemSourcedId,scoreScaleSourcedId")]
    public void Columns_are_those_of_the_standard(string file, string header)
    {
        Assert.Equal(header, string.Join(',', Tables[file][0]));
        Assert.All(Tables[file].Skip(1), row => Assert.Equal(Tables[file][0].Count, row.Count));
        Assert.Contains(Tables["manifest.csv"], row =>
            row.SequenceEqual(["file." + System.IO.Path.GetFileNameWithoutExtension(file), "bulk"])
        );
    }

    /// <summary>A school's records would take a stand-in for a real work of one point.</summary>
    [Fact]
    public void A_work_of_which_nobody_knows_the_points_is_left_out_with_its_results_and_that_is_said()
    {
        var works = Term.Term.Assignments;
        var made = ExportTerm
            .Run(new(Term.Term with { Assignments = [works[0] with { OutOf = null }, .. works.Skip(1)] }, Exchange), Run.Unwatched)
            .Model!;
        string Table(string name) => made.Files.Single(file => file.Name == name).Text;

        Assert.DoesNotContain("autumn-work-1,", Table("lineItems.csv"), StringComparison.Ordinal);
        Assert.DoesNotContain("autumn-work-1,", Table("results.csv"), StringComparison.Ordinal);
        Assert.Contains("autumn-work-2,", Table("results.csv"), StringComparison.Ordinal);
        Assert.Contains(ExportTerm.Write(made).Notes.OfType<ClassKit.Notes.Note.UngradedLeftOut>(), note =>
            note.Works.SequenceEqual([works[0].Title])
        );
    }

    [Fact]
    public void Whatever_is_referred_to_is_there_and_ids_are_unique()
    {
        Assert.All(Tables.Where(table => table.Key != "manifest.csv"), table =>
            Assert.Equal(Ids(table.Key).Count, Ids(table.Key).Distinct().Count())
        );
        Assert.Empty(Column("lineItems.csv", "categorySourcedId").Except(Ids("categories.csv")));
        Assert.Empty(Column("lineItems.csv", "academicSessionSourcedId").Except(Ids("academicSessions.csv")));
        Assert.Empty(Column("results.csv", "lineItemSourcedId").Except(Ids("lineItems.csv")));
        Assert.Empty(Column("results.csv", "studentSourcedId").Except(Term.Term.Class.Students.Select(student => student.Id)));
        Assert.Equal([Ids("scoreScales.csv")[0]], Column("lineItemScoreScales.csv", "scoreScaleSourcedId"));
        Assert.Contains(Column("lineItemScoreScales.csv", "lineItemSourcedId")[0], Ids("lineItems.csv"));
        Assert.Empty(
            Column("results.csv", "scoreStatus").Except(["exempt", "fully graded", "not submitted", "partially graded", "submitted"])
        );
        Assert.All(Column("scoreScales.csv", "scoreScaleValue")[0].Split(','), step => Assert.Matches(@"^\{[^:{}]+:[^:{}]+\}$", step));
    }

    [Fact]
    public void Everybody_has_the_grade_of_the_report_and_nothing_where_a_mark_is_to_come()
    {
        var grades = TermGrader.Grade(Term.Term);
        var rows = Tables["results.csv"].Skip(1).ToLookup(row => row[4]);

        Assert.All(grades.Where(grade => grade.Place is not null), grade =>
            Assert.Contains(rows[grade.Student.Id], row =>
                row[3] == "autumn-grade" && row[9] == Term.Term.Rule.Scale.Steps[grade.Place!.Value].Grade
            )
        );
        Assert.All(grades, grade => Assert.Equal(grade.Works.Count(work => !work.IsOpen) + 1, rows[grade.Student.Id].Count()));
        Assert.Contains("exempt", Column("results.csv", "scoreStatus"));
    }

    [Theory]
    [InlineData("2026-10-02", "2026-09-01", "2026-10-02")]
    [InlineData("2026-08-28", "2026-08-28", "2026-08-28")]
    [InlineData(null, "2026-09-01", "2026-12-18")]
    public void A_work_has_its_own_due_day_where_it_is_known(string? due, string assigned, string said)
    {
        var works = Term.Term.Assignments.Select(
            (work, at) =>
                at == 0
                    ? work with
                    {
                        Due = due is null ? null : DateOnly.Parse(due, System.Globalization.CultureInfo.InvariantCulture),
                    }
                    : work
        );
        var changed = Term.Term with { Assignments = [.. works], Attempts = [] };
        var row = ExportTerm
            .Run(new(changed, Exchange), Run.Unwatched)
            .Model!.Files.Single(file => file.Name == "lineItems.csv")
            .Text.Split("\r\n")[1]
            .Split(',');

        Assert.Equal([assigned, said], row[5..7]);
    }

    [Fact]
    public void A_term_that_ends_before_it_begins_is_asked_about() =>
        Assert.Contains(
            "before the term begins",
            Assert.Single(ExportTerm.Run(new(Term.Term, Exchange with { Ends = new(2026, 8, 1) }), Run.Unwatched).Problems).Found,
            StringComparison.Ordinal
        );

    private static List<string> Ids(string file) => Column(file, "sourcedId");

    private static List<string> Column(string file, string name)
    {
        var at = Tables[file][0].Index().First(column => column.Item == name).Index;
        return [.. Tables[file].Skip(1).Select(row => row[at])];
    }
}
