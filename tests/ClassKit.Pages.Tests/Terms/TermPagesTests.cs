using AngleSharp.Dom;
using ClassKit.Pages.Tests.Samples;
using ClassKit.Wording.Terms;

namespace ClassKit.Pages.Tests.Terms;

public sealed class TermPagesTests
{
    [Fact]
    public void The_report_has_a_row_a_student_and_names_whom_a_line_holds_back()
    {
        var page = Html.Parse(SamplePages.All["term-report.html"]);

        Assert.Equal(SampleTerm.Grades.Count, page.QuerySelectorAll("#grades ~ .wide tbody tr").Length);
        Assert.Equal(SampleTerm.Grades.Count(grade => grade.Place < grade.ByAverage), page.QuerySelectorAll("#held ~ ul li").Length);
    }

    [Fact]
    public void A_student_reads_every_step_and_what_is_needed()
    {
        foreach (var grade in SampleTerm.Grades)
        {
            var page = Html.Parse(SamplePages.All[$"term-{grade.Student.Id}.html"]);
            Assert.Equal(
                WorkingWords.Of(grade, SampleTerm.Term.Rule),
                page.QuerySelectorAll("#working ~ ol li").Select(step => step.TextContent)
            );
            Assert.Equal(grade.Works.Count(), page.QuerySelectorAll("#marks ~ .wide tbody tr td:nth-child(2)").Length);
            // What must be passed and was shown by nobody keeps a grade from being final, and no work is to come for it.
            Assert.Equal(grade.Works.Any(work => work.IsOpen), page.QuerySelector("#outlook") is not null);
        }
    }

    /// <summary>Each student's part says what their own page says, and no line of it refers to another's.</summary>
    [Fact]
    public void Grades_to_print_are_everybodys_own_pages()
    {
        var page = Html.Parse(SamplePages.All["grades-to-print.html"]);
        var parts = page.QuerySelectorAll("article");

        Assert.Equal(
            SampleTerm.Grades.Select(grade => grade.Student.Shown),
            parts.Select(part => part.QuerySelector("h2.name")!.TextContent)
        );
        foreach (var (part, grade) in parts.Zip(SampleTerm.Grades))
            Assert.Equal(
                Html.Parse(SamplePages.All[$"term-{grade.Student.Id}.html"])
                    .QuerySelectorAll("section")
                    .Select(section => section.TextContent),
                part.QuerySelectorAll("section").Select(section => section.TextContent)
            );
        var names = page.QuerySelectorAll("[id]").Select(one => one.Id).ToList();
        Assert.Equal(names.Distinct(), names);
    }

    [Fact]
    public void Agreement_says_whom_the_markers_saw_differently_and_where()
    {
        var rows = Html.Parse(SamplePages.All["marking-agreement.html"])
            .QuerySelector("#work-1")!
            .Closest("section")!
            .QuerySelectorAll("tbody tr")
            .Select(row => row.Text())
            .ToList();

        Assert.Contains("Safety: Developing or Excellent; Mixing: Developing or Not yet", rows[0], StringComparison.Ordinal);
        Assert.Contains("Mixing: Developing or Secure", rows[1], StringComparison.Ordinal);
        Assert.Contains("5 of 6", rows[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Small_classes_are_not_said_to_prove_anything()
    {
        var page = Html.Parse(SamplePages.All["marking-agreement.html"]).Body!.Text();

        Assert.Contains("With 6 students that interval says more than the figure", page, StringComparison.Ordinal);
        Assert.Contains("0 students were marked by both: nothing can be said", page, StringComparison.Ordinal);
    }
}
