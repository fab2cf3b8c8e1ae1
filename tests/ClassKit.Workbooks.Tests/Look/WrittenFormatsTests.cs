using System.IO.Compression;
using System.Net;
using System.Text.RegularExpressions;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Tests.Samples;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Gradebooks;
using ClassKit.Workbooks.Terms;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Look;

public sealed partial class WrittenFormatsTests
{
    /// <summary>
    /// ECMA-376 Part 1, 18.8.31: of # nothing is shown where there is no digit, but the decimal point before it is shown always, so that
    /// 0.## makes "6." of 6.
    /// </summary>
    [Fact]
    public void No_format_leaves_a_decimal_sign_behind_a_whole_number()
    {
        var term = RandomTerms.Of(1);
        foreach (
            var workbook in new[]
            {
                GradebookWriter.Write(SampleGrades.Grades, SampleGrades.Summary),
                DealtWorkbookWriter.Write(SampleClass.Dealt, SampleClass.Dealt.Students[0]),
                TermWorkbookWriter.Write(term, TermGrader.Grade(term)),
            }
        )
        {
            using var package = new ZipArchive(new MemoryStream(workbook));
            using var styles = new StreamReader(package.Entries.Single(entry => entry.Name == "styles.xml").Open());
            var formats = Codes().Matches(styles.ReadToEnd()).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value)).ToList();
            Assert.NotEmpty(formats);
            Assert.DoesNotContain(formats, format => format.Contains("0.#", StringComparison.Ordinal));
        }
    }

    [GeneratedRegex("formatCode=\"([^\"]*)\"")]
    private static partial Regex Codes();
}
