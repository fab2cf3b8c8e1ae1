using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;
using ClosedXML.Excel;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>
/// Workbooks printed by LibreOffice with Carlito, whose letters are as wide as Calibri's: nothing comes out too small to read, and no column
/// is lost at the edge of a page.
/// </summary>
public sealed partial class PrintedWorkbooksTests(TourRun tour) : IDisposable
{
    /// <summary>What is still read at arm's length, in points; common practice, no source. 9 is aimed at.</summary>
    private const double LeastType = 8.6;

    /// <summary>What students are to read from, in points: common practice for handouts, no source, is 10 to 12.</summary>
    private const double UsualType = 10;

    /// <summary>What large print means on paper, in points: the RNIB's Clear Print guidance, from memory, has 16 to 18.</summary>
    private const double LargeType = 16;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(12, "A4")]
    [InlineData(12, "Letter")]
    [InlineData(24, "A4")]
    [InlineData(24, "Letter")]
    [InlineData(60, "A4")]
    [InlineData(60, "Letter")]
    public void Nothing_that_an_instructor_prints_is_too_small_and_no_column_is_lost(int students, string paper)
    {
        Tool.LibreOffice.Require();
        Tool.Carlito.Require();
        var roster = Roster(students);
        var profile = Profile(students, paper);
        ClassKitRun.Of("pack", Checkout.Demo.Lesson, "--class", profile, "--out", _folder.Of("pack")).Done();
        ClassKitRun
            .Of("deal", Checkout.Demo.Lesson, "--class", profile, "--roster", roster, "--out", _folder.Of("dealt"), "--seed", "7")
            .Done();
        Directory.CreateDirectory(_folder.Of("returned"));
        File.Copy(Workbooks("dealt")[1], _folder.Of("returned", "one.xlsx"));
        Assert.Equal(
            0,
            ClassKitRun.Of("grade", _folder.Of("dealt"), "--returned", _folder.Of("returned"), "--out", _folder.Of("graded")).ExitCode
        );
        ClassKitRun.Of("paper", _folder.Of("dealt"), "--out", _folder.Of("typed")).Done();
        ClassKitRun
            .Of(
                "bench",
                Path.Combine(Checkout.Demo.Root, "rubrics", "bench-work.md"),
                "--class",
                profile,
                "--roster",
                roster,
                "--out",
                _folder.Of("bench")
            )
            .Done();

        List<string> books =
        [
            .. Workbooks("pack"),
            .. Workbooks("graded"),
            .. Workbooks("typed"),
            .. Workbooks("bench"),
            Workbooks("dealt")[1],
        ];
        // Requisition, observations, tasting; gradebook; answers on paper; bench marks; a student's.
        Assert.Equal(7, books.Count);
        var faults = books.SelectMany(book => Faults(book, LeastType)).ToList();
        Assert.True(faults.Count == 0, string.Join('\n', faults));

        Assert.Empty(books.Append(Workbooks("dealt")[0]).SelectMany(OfSchemas));

        // A class of two dozen is seen on one side.
        if (students <= 24)
            Assert.Equal(1, PagesOf("Class", Workbooks("graded").Single()));

        // The first on the roster asked for large print.
        var large = Faults(Workbooks("dealt")[0], LargeType).ToList();
        Assert.True(large.Count == 0, string.Join('\n', large));

        // A side to start from and one an exercise; in large print three and two each at most. What runs over an edge would take more.
        var (usual, exercises) = (Pages(Workbooks("dealt")[1]), Sheets(Workbooks("dealt")[1]) - 1);
        Assert.Equal(exercises + 1, usual);
        Assert.InRange(Pages(Workbooks("dealt")[0]), exercises + 1, 3 + 2 * exercises);
        // Most sheets of a student are printed hardly smaller than they are; a long one may be.
        Assert.InRange(Faults(Workbooks("dealt")[1], UsualType).Count(), 0, exercises / 3);
    }

    [Fact]
    public void A_term_is_printed_as_large()
    {
        Tool.LibreOffice.Require();
        Tool.Carlito.Require();
        var term = Path.Combine(tour.Folder, "term", "term.xlsx");
        var faults = Faults(term, LeastType).Concat(OfSchemas(term)).ToList();
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>What the validator of the Open XML SDK finds against the schemas of ECMA-376.</summary>
    private static IEnumerable<string> OfSchemas(string book)
    {
        using var document = SpreadsheetDocument.Open(book, isEditable: false);
        return
        [
            .. new OpenXmlValidator(FileFormatVersions.Office2013)
                .Validate(document)
                .Take(20)
                .Select(error => $"{Path.GetFileName(book)} {error.Part?.Uri} {error.Path?.XPath}: {error.Description}"),
        ];
    }

    /// <summary>The pages that bear a sheet's name at their foot.</summary>
    private int PagesOf(string sheet, string book)
    {
        var pdf = _folder.Of("sheet.pdf");
        File.WriteAllBytes(pdf, LibreOffice.Convert(File.ReadAllBytes(book), "pdf"));
        return Regex.Count(Tool.PdfToText.Run("-layout", pdf, "-"), $@"^\s*{sheet} +Page \d+ of", RegexOptions.Multiline);
    }

    private int Pages(string book)
    {
        var pdf = _folder.Of("counted.pdf");
        File.WriteAllBytes(pdf, LibreOffice.Convert(File.ReadAllBytes(book), "pdf"));
        return Page().Count(Tool.PdfToHtml.Run("-xml", "-i", "-stdout", pdf));
    }

    private static int Sheets(string book)
    {
        using var workbook = new XLWorkbook(book);
        return workbook.Worksheets.Count;
    }

    private List<string> Workbooks(string folder) =>
        [.. Directory.EnumerateFiles(_folder.Of(folder), "*.xlsx", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    private string Roster(int students)
    {
        var file = _folder.Of("roster.csv");
        File.WriteAllLines(
            file,
            [
                "id,name,large print",
                .. Enumerable
                    .Range(1, students)
                    .Select(at =>
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"student-{at:00},Maximiliane Oyelaran-{at:00},{(at == 1 ? "yes" : "")}"
                        )
                    ),
            ]
        );
        return file;
    }

    private string Profile(int students, string paper)
    {
        var file = _folder.Of("class.md");
        File.WriteAllText(
            file,
            Edited(
                File.ReadAllText(Checkout.Demo.Class),
                ("paper: A4", "paper: " + paper),
                ("students: 24", string.Create(CultureInfo.InvariantCulture, $"students: {students}")),
                ("teams: 6", string.Create(CultureInfo.InvariantCulture, $"teams: {students / 4}")),
                ("ovens: 3", "ovens: 8"),
                ("oven places: 6", "oven places: 16"),
                (
                    "[6 burners, 12 proofing places, 6 scales, 6 small scales]",
                    "[16 burners, 32 proofing places, 16 scales, 16 small scales]"
                ),
                ("prices: prices.md", "prices: " + Path.Combine(Checkout.Demo.Root, "demo-cohort", "prices.md"))
            )
        );
        return file;
    }

    private static string Edited(string text, params (string Old, string New)[] edits)
    {
        foreach (var (old, with) in edits)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, with, StringComparison.Ordinal);
        }
        return text;
    }

    /// <summary>Where type is too small, and columns of which nothing arrived on paper.</summary>
    private IEnumerable<string> Faults(string book, double least)
    {
        var name = Path.GetFileName(book);
        var pdf = _folder.Of("printed.pdf");
        File.WriteAllBytes(pdf, LibreOffice.Convert(File.ReadAllBytes(book), "pdf"));
        // Three times the size, the most that the program knows, since it gives whole numbers.
        var pages = Page().Split(Tool.PdfToHtml.Run("-xml", "-i", "-zoom", "3", "-stdout", pdf))[1..];
        Assert.NotEmpty(pages);
        var fonts = new Dictionary<string, double>();
        foreach (var (number, page) in pages.Index())
        {
            foreach (Match font in Font().Matches(page))
                fonts[font.Groups["id"].Value] = Number(font.Groups["size"]) / 3;
            var height = Number(Height().Match(page).Groups["height"]);
            var smallest = Text()
                .Matches(page)
                .Where(text => Number(text.Groups["top"]) / height is > 0.065 and < 0.935)
                .Select(text => (Size: fonts[text.Groups["font"].Value], Words: text.Groups["words"].Value))
                .DefaultIfEmpty((Size: 99.0, Words: ""))
                .MinBy(text => text.Size);
            // Whole numbers of a third of a point are rounded down.
            if (smallest.Size + 1 / 3.0 < least)
                yield return string.Create(
                    CultureInfo.InvariantCulture,
                    $"{name}, page {number + 1}: “{smallest.Words}” is printed in {smallest.Size:0.0} points, and {least} are readable"
                );
        }

        var printed = Tool
            .PdfToText.Run("-raw", pdf, "-")
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .ToHashSet(StringComparer.Ordinal);
        using var workbook = new XLWorkbook(book);
        foreach (var sheet in workbook.Worksheets)
        {
            foreach (var column in sheet.PageSetup.PrintAreas.Single().Columns())
            {
                List<string> texts =
                [
                    .. column
                        .Cells()
                        .Where(cell => !cell.HasFormula && cell.DataType == XLDataType.Text)
                        .Select(cell => cell.GetString())
                        .Where(text => text.Trim().Length > 0),
                ];
                if (
                    texts.Count > 0
                    && !texts.Exists(text => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).All(printed.Contains))
                )
                    yield return $"{name}, {sheet.Name}: nothing of column {column.FirstCell().Address.ColumnLetter} is on paper, such as “{texts[0]}”";
            }
        }
    }

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("<page ")]
    private static partial Regex Page();

    [GeneratedRegex("""height="(?<height>\d+)""")]
    private static partial Regex Height();

    [GeneratedRegex("""<fontspec id="(?<id>\d+)" size="(?<size>\d+)" """)]
    private static partial Regex Font();

    [GeneratedRegex("""<text top="(?<top>-?\d+)"[^>]*font="(?<font>\d+)">(?<words>.*)</text>""")]
    private static partial Regex Text();
}
