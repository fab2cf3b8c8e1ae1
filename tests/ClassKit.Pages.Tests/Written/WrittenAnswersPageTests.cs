using System.Net;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Written;

public sealed class WrittenAnswersPageTests
{
    private static string Page { get; } = SamplePages.All["written-answers.html"];

    [Fact]
    public void Everybodys_words_stand_under_the_question_as_text_with_numbers_and_room_for_points()
    {
        Assert.Equal(8, Page.Split("<article").Length - 1);
        Assert.Contains("&lt;b&gt;friction&lt;/b&gt; &amp; heat", Page, StringComparison.Ordinal);
        Assert.Contains("<b>friction</b> & heat", WebUtility.HtmlDecode(Page), StringComparison.Ordinal);
        Assert.Contains("The first 2000 of 3210 characters", Page, StringComparison.Ordinal);
        Assert.Contains("dir=\"auto\">بسبب الاحتكاك", Page, StringComparison.Ordinal);
        Assert.Contains("1.5 of 2 points", Page, StringComparison.Ordinal);
        Assert.Contains("No answer: Ewa Żółkiewska and José Peña.", Page, StringComparison.Ordinal);
        Assert.Contains("One point for the friction", Page, StringComparison.Ordinal);
    }

    /// <summary>Words are not judged, so that no class is said to have missed them.</summary>
    [Fact]
    public void The_class_report_leads_there_and_teaches_nothing_again_because_of_blanks()
    {
        var report = SamplePages.All["class-report-words.html"];

        Assert.Contains("href=\"written-answers.html\"", report, StringComparison.Ordinal);
        var again = report[
            report.IndexOf("id=\"teach-again\"", StringComparison.Ordinal)..report.IndexOf(
                "</section>",
                report.IndexOf("id=\"teach-again\"", StringComparison.Ordinal),
                StringComparison.Ordinal
            )
        ];
        Assert.DoesNotContain("Why does the dough", again, StringComparison.Ordinal);
    }

    [Fact]
    public void Students_have_lines_or_a_field_and_are_told_who_reads()
    {
        Assert.Contains("writing-lines", SamplePages.All["sheet-words.html"], StringComparison.Ordinal);
        Assert.DoesNotContain("One point for", SamplePages.All["sheet-words.html"], StringComparison.Ordinal);
        Assert.Contains("<textarea", SamplePages.All["self-check-words.html"], StringComparison.Ordinal);
        Assert.Contains("Your instructor reads this", SamplePages.All["feedback-words-s01.html"], StringComparison.Ordinal);
        Assert.Contains("Read by your instructor", SamplePages.All["feedback-words-s02.html"], StringComparison.Ordinal);
    }
}
