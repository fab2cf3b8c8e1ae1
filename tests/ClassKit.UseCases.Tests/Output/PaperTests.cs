using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>One setting of the class profile decides what every page and every workbook is printed on.</summary>
public sealed partial class PaperTests
{
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Whatever_is_made_for_a_class_asks_for_its_paper(Paper paper)
    {
        var deal = DealPractice
            .Run(new(PracticeSet.Of(SmallClass.Lesson), Roster(paper), new(SetWish.None, IsSpread: false, 5)), Run.Unwatched)
            .Model!;
        var dealt = DealtJson.Read("dealt.json", DealtJson.Write(deal.Dealt)).Model!;
        var returned = dealt.Students.Select(student => new Upload($"{student.Who.Id}.xlsx", () =>
            new MemoryStream(SmallClass.Filled(dealt, student))
        ));
        var graded = GradeClass.Run(new(dealt, ReturnedFiles.Of([.. returned])), Run.Unwatched);
        var profile = UsualClass.Profile with { Paper = paper };
        var pack = BuildPack.Run(new(SmallClass.Lesson, profile, "class.md"), Run.Unwatched).Model!;

        OutputFile[] files = [.. DealFiles.Of(deal), .. GradeFiles.Of(graded), .. PackFiles.Of(pack)];

        Assert.All(files, file => Assert.All(Asked(file), asked => Assert.Equal(paper, asked)));
        Assert.Contains(files, file => file.Path.EndsWith(".xlsx", StringComparison.Ordinal) && Asked(file).Count > 1);
        Assert.All(files.Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)), file => Assert.NotEmpty(Asked(file)));
    }

    [Fact]
    public void A_class_that_names_no_paper_leaves_pages_to_the_printer_and_keeps_what_was_said_before()
    {
        var request = new DealRequest(PracticeSet.Of(SmallClass.Lesson), Roster(null), new(SetWish.None, IsSpread: false, 5));
        var unsaid = DealPractice.Run(request, Run.Unwatched).Model!;
        Assert.All(DealFiles.Of(unsaid).Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)), file =>
            Assert.Empty(Asked(file))
        );

        var said = DealPractice.Run(request with { Roster = Roster(Paper.Letter) }, Run.Unwatched).Model!.Dealt;
        Assert.Equal(Paper.Letter, DealPractice.Run(request with { Earlier = new(null, said) }, Run.Unwatched).Model!.Dealt.Paper);
    }

    [Fact]
    public void A_paper_that_is_not_known_is_not_taken_for_another()
    {
        var text = DealtJson.Write(SmallClass.Dealt with { Paper = Paper.A4 }).Replace("\"A4\"", "\"A5\"", StringComparison.Ordinal);

        Assert.Contains("“A5” is no paper", Assert.Single(DealtJson.Read("dealt.json", text).Problems).Found, StringComparison.Ordinal);
    }

    private static Roster Roster(Paper? paper) =>
        new("Invented class", [new("ada-berg", "Ada Berg"), new("ben-okoye", "Ben Okoye")]) { Paper = paper };

    /// <summary>
    /// The papers that a file's page rules (CSS Paged Media 3) or sheets (ECMA-376 Part 1, 18.3.1.63: 1 is Letter, 9 is A4) ask for.
    /// </summary>
    private static List<Paper> Asked(OutputFile file) =>
        Path.GetExtension(file.Path) switch
        {
            ".html" =>
            [
                .. Size()
                    .Matches(Encoding.UTF8.GetString(file.Content))
                    .Select(match => match.Groups[1].Value == "A4" ? Paper.A4 : Paper.Letter),
            ],
            ".xlsx" =>
            [
                .. Sheets(file.Content)
                    .Select(sheet =>
                        PaperSize().Match(sheet).Groups[1].Value switch
                        {
                            "9" => Paper.A4,
                            "1" => Paper.Letter,
                            var other => throw new FormatException($"paper {other} in {file.Path}"),
                        }
                    ),
            ],
            _ => [],
        };

    private static IEnumerable<string> Sheets(byte[] workbook)
    {
        using var package = new ZipArchive(new MemoryStream(workbook));
        foreach (var entry in package.Entries.Where(entry => entry.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(entry.Open());
            if (
                reader.ReadToEnd() is var text
                && text.Contains("<x:pageSetup", StringComparison.Ordinal) | text.Contains("<pageSetup", StringComparison.Ordinal)
            )
                yield return text;
        }
    }

    [GeneratedRegex(@"size: (A4|letter)\b")]
    private static partial Regex Size();

    [GeneratedRegex(@"paperSize=""(\d+)""")]
    private static partial Regex PaperSize();
}
