using AngleSharp.Dom;
using ClassKit.Grading.Results;
using ClassKit.Pages.ClassPrints;
using ClassKit.Pages.Rendering;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.ClassPrints;

public sealed class ClassPrintsTests
{
    private static readonly IDocument Feedback = Html.Parse(SamplePages.All["feedback-to-print.html"]);
    private static readonly IDocument Sheets = Html.Parse(SamplePages.All["sheets-to-print.html"]);

    [Fact]
    public void Everybody_who_has_something_to_read_is_there_in_the_order_of_the_class_and_of_the_list()
    {
        var told = SampleClass
            .Grades.Students.Where(student => student.Status != GradeStatus.Missing)
            .Select(student => student.Who.Shown)
            .ToList();

        Assert.Equal(told, Feedback.QuerySelectorAll("article h2.name").Select(name => name.Text()));
        Assert.Equal(told, Feedback.QuerySelectorAll(".handing-out tbody th").Select(name => name.Text()));
        Assert.All(SampleClass.Grades.Students.Where(student => student.Status == GradeStatus.Missing), student =>
            Assert.Contains(student.Who.Shown, Feedback.QuerySelector("main > p")!.Text(), StringComparison.Ordinal)
        );
        Assert.Equal(
            SampleClass.Dealt.Students.Select(student => student.Who.Shown),
            Sheets.QuerySelectorAll("article h2.name").Select(name => name.Text())
        );
    }

    [Fact]
    public void What_a_student_reads_is_what_their_own_page_says()
    {
        foreach (var grade in SampleClass.Grades.Students.Where(student => student.HasPoints))
        {
            var own = Html.Parse(SamplePages.All[$"feedback-{grade.Who.Id}.html"]);
            var printed = Feedback.QuerySelector($"#name-{grade.Who.Id}")!.Closest("article")!;
            foreach (var part in new[] { ".figures", ".marks", ".put-right .answers", ".next-steps p", ".missed-part" })
                Assert.Equal(
                    own.QuerySelectorAll(part).Select(piece => piece.InnerHtml),
                    printed.QuerySelectorAll(part).Select(piece => piece.InnerHtml)
                );
        }
    }

    [Fact]
    public void No_sheet_to_work_on_holds_an_answer()
    {
        foreach (var dealt in SampleClass.Dealt.Students)
        {
            var own = Html.Parse(HtmlPages.Sheet(SampleClass.Dealt, dealt));
            var printed = Sheets.QuerySelector($"#name-{dealt.Who.Id}")!.Closest("article")!;
            Assert.Equal(
                own.QuerySelectorAll(".part h3").Select(ask => ask.Text()),
                printed.QuerySelectorAll(".part h3, .part h4").Select(ask => ask.Text())
            );
            Assert.Equal(
                own.QuerySelectorAll("table td").Select(cell => cell.Text()),
                printed.QuerySelectorAll("table td").Select(cell => cell.Text())
            );
        }
    }

    [Theory]
    [InlineData(1, 2, 1)]
    [InlineData(2, 2, 1)]
    [InlineData(7, 8, 4)]
    public void The_next_student_begins_on_a_fresh_sheet(int wanted, int sides, int sheets)
    {
        var printed = PrintedStudent.Of(SampleClass.Dealt.Students[0].Who, wanted);

        Assert.Equal((sides, sheets), (printed.Sides, printed.Sheets));
    }

    /// <summary>A list that ends on a front is followed by an empty back: else everybody's front would be printed on a back.</summary>
    [Theory]
    [InlineData(1, 1, 1, 2)]
    [InlineData(30, 1, 1, 31)]
    [InlineData(31, 2, 0, 32)]
    [InlineData(60, 2, 0, 61)]
    [InlineData(61, 3, 1, 63)]
    [InlineData(125, 5, 1, 128)]
    public void The_list_takes_whole_sheets_and_says_so(int students, int sides, int blank, int sheets)
    {
        var page = Html.Parse(
            PageRenderer.Render<ClassPrintPage>(
                (nameof(ClassPrintPage.Title), "To print"),
                (nameof(ClassPrintPage.Class), "sheet to-print"),
                (nameof(ClassPrintPage.Dealt), SampleClass.Dealt),
                (
                    nameof(ClassPrintPage.Printed),
                    new PrintedClass([.. Enumerable.Repeat(PrintedStudent.Of(SampleClass.Dealt.Students[0].Who, 2), students)], 0)
                ),
                (nameof(ClassPrintPage.Aside), "")
            )
        );

        Assert.Equal((sides, blank), (page.QuerySelectorAll("table.handing-out").Length, page.QuerySelectorAll(".blank-side").Length));
        Assert.Equal(sides - 1, page.QuerySelectorAll("table.new-sheet").Length);
        Assert.Contains($"{sheets} sheets of paper", page.QuerySelector(".lede")!.Text(), StringComparison.Ordinal);
    }
}
