using System.Globalization;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;
using CsvHelper;

namespace ClassKit.EndToEnd.Tests.Marking;

/// <summary>A term weighed into grades, from the files that an instructor writes to the pages that students read.</summary>
public sealed class WeighTests(TourRun tour) : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private static string DemoTerm => Path.Combine(Checkout.Demo.Root, "demo-cohort", "term", "term.md");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_demo_term_becomes_grades_with_their_working()
    {
        ClassKitRun.Of("weigh", DemoTerm, "--out", _folder.Of("out")).Done();

        Assert.Equal(24, Directory.GetFiles(_folder.Of("out", "students")).Length);
        Assert.True(File.Exists(_folder.Of("out", "term-report.html")));
        Assert.True(File.Exists(_folder.Of("out", "term.xlsx")));
        Assert.Contains("Bench day one", File.ReadAllText(_folder.Of("out", "marking-agreement.html")), StringComparison.Ordinal);

        // He came late to the leavening sums, and a tenth is taken off.
        Assert.Contains("late, less 10", Student("min-jun-park"), StringComparison.Ordinal);

        // 7 of 20, and 16 of 20 in the resit, held to 70 %.
        Assert.Contains("7 of 20; resit: 16 of 20, as a resit 70", Student("jorge-fuentes-vidal"), StringComparison.Ordinal);
        Assert.Contains("absent, 0", Student("rosa-whitehorse"), StringComparison.Ordinal);
        Assert.Contains("What is still to come", Student("selin-aydin"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_term_gives_the_same_files()
    {
        ClassKitRun.Of("weigh", DemoTerm, "--out", _folder.Of("one")).Done();
        ClassKitRun.Of("weigh", DemoTerm, "--out", _folder.Of("two")).Done();

        Assert.Equal(FolderContent.Digests(_folder.Of("one")), FolderContent.Digests(_folder.Of("two")));
    }

    [Fact]
    public void A_graded_folder_gives_its_points_and_a_word_excuses()
    {
        ClassKitRun.Of("weigh", Term("student,Set one\nrosa-whitehorse,excused\nnoor-rahman,absent\n"), "--out", _folder.Of("out")).Done();

        using var csv = new CsvReader(new StreamReader(Path.Combine(tour.Folder, "graded", "grades.csv")), CultureInfo.InvariantCulture);
        var graded = csv.GetRecords<dynamic>().Cast<IDictionary<string, object>>().Where(row => (string)row["status"] == "graded").ToList();
        Assert.True(graded.Count > 15);
        Assert.All(graded, row =>
            Assert.Contains($"<td>{row["points"]} of {row["out of"]}", Student((string)row["id"]), StringComparison.Ordinal)
        );
        Assert.Contains("<td>excused", Student("rosa-whitehorse"), StringComparison.Ordinal);
        Assert.Contains("<td>absent", Student("noor-rahman"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_beside_a_mark_contradicts_it()
    {
        var run = ClassKitRun.Of("weigh", Term("student,Set one\namara-osei,absent\n"), "--out", _folder.Of("out"));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("marks.csv:2: `amara-osei` has a mark for `Set one` elsewhere", run.Problems, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folder.Of("out")));
    }

    [Fact]
    public void Students_of_another_class_are_named()
    {
        var term = Term("student,Set one\n");
        File.WriteAllText(_folder.Of("roster.csv"), "id,name\namara-osei,Amara Osei\n");
        var run = ClassKitRun.Of("weigh", term, "--out", _folder.Of("out"));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("has a student `priya-raghavan`, who is not on the roster", run.Problems, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_takes_invented_students_through_a_rule()
    {
        var run = ClassKitRun.Of("check", Path.Combine(Checkout.Demo.Root, "rubrics", "term-grade.md")).Done();

        Assert.Contains("the weights come to 100 %. Three invented students:", run.Output, StringComparison.Ordinal);
        Assert.Equal(3, run.Output.Split("The grade is “").Length - 1);
    }

    private string Student(string id) => File.ReadAllText(_folder.Of("out", "students", id + ".html")).Replace('\u00A0', ' ');

    private string Term(string marks)
    {
        File.Copy(Path.Combine(Checkout.Demo.Root, "demo-cohort", "roster.csv"), _folder.Of("roster.csv"));
        File.WriteAllText(_folder.Of("marks.csv"), marks);
        File.WriteAllText(
            _folder.Of("term.md"),
            $"""
            ---
            roster: roster.csv
            rule: {Path.Combine(Checkout.Demo.Root, "rubrics", "term-grade.md")}
            marks: marks.csv
            ---

            # One set

            ## Work

            | Work | Kind | Category | Out of | Marks | Resit | Second marker |
            |---|---|---|---|---|---|---|
            | Set one | calculations | Calculations | | {Path.Combine(tour.Folder, "graded")} | | |
            """
        );
        return _folder.Of("term.md");
    }
}
