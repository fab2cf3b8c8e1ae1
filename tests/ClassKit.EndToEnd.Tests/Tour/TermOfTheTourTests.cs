using System.Net;
using ClassKit.DemoCohort;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Tour;

/// <summary>The tour's term: three assignments, two markers, two on paper, six teams, a resit, and the grades at the end.</summary>
public sealed class TermOfTheTourTests(TourRun tour)
{
    private string Text(params string[] path) =>
        WebUtility.HtmlDecode(File.ReadAllText(Path.Combine([tour.Folder, .. path]))).Replace('\u00A0', ' ');

    [Fact]
    public void Two_of_the_second_set_worked_on_paper_and_one_was_away()
    {
        var rows = Text("second-set", "graded", "grades.csv").Split("\r\n", StringSplitOptions.RemoveEmptyEntries);

        Assert.EndsWith(",on paper", rows[0], StringComparison.Ordinal);
        Assert.Equal(
            ["hana-sato", "noor-rahman"],
            rows.Where(row => row.EndsWith(",yes", StringComparison.Ordinal)).Select(row => row.Split(',')[0])
        );
        Assert.Equal(
            ["rosa-whitehorse"],
            rows.Where(row => row.Contains(",missing,", StringComparison.Ordinal)).Select(row => row.Split(',')[0])
        );
    }

    [Fact]
    public void A_resit_says_of_what_and_the_term_counts_it()
    {
        Assert.Equal(
            ["bao-nguyen.xlsx", "rosa-whitehorse.xlsx"],
            Directory
                .EnumerateFiles(Path.Combine(tour.Folder, "resit", "dealt", "workbooks"))
                .Select(Path.GetFileName)
                .Order(StringComparer.Ordinal)
        );
        Assert.Contains("resit of ", Text("resit", "dealt", "sheets", "bao-nguyen.html"), StringComparison.Ordinal);
        Assert.Contains("Dough temperature", Text("term", "students", "bao-nguyen.html"), StringComparison.Ordinal);
        Assert.Contains("resit", Text("term", "students", "bao-nguyen.html"), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Six_teams_measured_and_one_that_opened_the_door_is_asked_about()
    {
        var drawn = Text("observed", "what-we-measured.html");
        Assert.Contains("of 6 teams", drawn, StringComparison.Ordinal);
        Assert.Contains("Team 4", drawn, StringComparison.Ordinal);
    }

    [Fact]
    public void Everybody_has_a_grade_and_the_markers_are_compared()
    {
        Assert.Equal(24, Directory.EnumerateFiles(Path.Combine(tour.Folder, "term", "students")).Count());
        Assert.True(File.Exists(Path.Combine(tour.Folder, "term", "term.xlsx")));
        Assert.True(File.Exists(Path.Combine(tour.Folder, "term", "marking-agreement.html")));
    }

    [Fact]
    public void What_the_class_brought_back_is_what_its_makers_make()
    {
        var made = TermFiles.Of(Checkout.Demo);
        var folder = Checkout.Demo.TermFolder;
        Assert.Equal(
            made.Keys.Order(StringComparer.Ordinal),
            new[] { "returned", "returned-resit", "observed", "on-paper" }
                .SelectMany(name => Directory.EnumerateFiles(Path.Combine(folder, name)))
                .Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))
                .Order(StringComparer.Ordinal)
        );
        Assert.All(made, file =>
            Assert.True(
                file.Value.AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(folder, file.Key))),
                $"{file.Key}: remake it with `dotnet run --project tests/ClassKit.DemoCohort -- term`"
            )
        );
    }
}
