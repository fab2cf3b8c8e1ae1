using System.IO.Compression;
using ClassKit.Exercises.Cohorts;
using ClassKit.Workbooks.Erasing;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Tests.Erasing;

/// <summary>
/// A class list that LibreOffice saved as .ods, without one student's row: LibreOffice opens what is left and finds everything else.
/// </summary>
public class ClearedOpenRowsTests
{
    private static readonly SoughtStudent Ada = new(
        new("ada-berg", "Ada Berg"),
        [new("ben-okoye", "Ben Okoye"), new("cleo-marin", "Cleo Marín")]
    );

    [Fact]
    public void A_students_row_is_emptied_and_another_program_finds_all_else()
    {
        var list = LibreOffice.Convert(List(), "ods");
        var rows = StudentWorkbook.Read(list, Ada)!.Rows(Ada);
        var cleared = ClearedOpenRows.In(list, rows, ("form 1", "form 2"))!;

        using var book = new XLWorkbook(new MemoryStream(LibreOffice.SaveAgain(cleared)));
        var sheet = book.Worksheet("Class");
        Assert.Equal(
            ["form 2", "id", "name", "ben-okoye", "Ben Okoye", "cleo-marin", "Cleo Marín"],
            sheet.CellsUsed().Where(cell => !cell.HasFormula && cell.DataType == XLDataType.Text).Select(cell => cell.GetString())
        );
        Assert.Equal((7.0, 14.0, 8.0), (sheet.Cell("C5").GetDouble(), sheet.Cell("D5").GetDouble(), sheet.Cell("C7").GetDouble()));
        Assert.Equal("C4*2", sheet.Cell("D4").FormulaA1);
        Assert.Equal(XLColor.FromHtml("#FFEE00"), sheet.Cell("B4").Style.Fill.BackgroundColor);
        Assert.False(StudentWorkbook.Read(cleared, Ada)!.IsNamed);

        // Not in the note on a cell, nor in the picture of the first sheet.
        using var parts = new ZipArchive(new MemoryStream(cleared));
        Assert.Null(parts.GetEntry("Thumbnails/thumbnail.png"));
        Assert.All(parts.Entries, part =>
        {
            using var text = new StreamReader(part.Open());
            Assert.DoesNotContain("Ada", text.ReadToEnd(), StringComparison.Ordinal);
        });
        Assert.Equal("mimetype", parts.Entries[0].FullName);
    }

    [Fact]
    public void What_keeps_what_its_cells_said_before_and_what_is_signed_is_left_alone()
    {
        var rows = new Dictionary<string, IReadOnlySet<int>> { ["Class"] = new HashSet<int> { 1 } };
        const string Content =
            """<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"><office:body><office:spreadsheet>TRACKED<table:table table:name="Class"><table:table-row/></table:table></office:spreadsheet></office:body></office:document-content>""";

        Assert.NotNull(ClearedOpenRows.In(Packed(("content.xml", Content.Replace("TRACKED", "", StringComparison.Ordinal))), rows));
        Assert.Null(
            ClearedOpenRows.In(
                Packed(("content.xml", Content.Replace("TRACKED", "<table:tracked-changes/>", StringComparison.Ordinal))),
                rows
            )
        );
        Assert.Null(
            ClearedOpenRows.In(
                Packed(
                    ("content.xml", Content.Replace("TRACKED", "", StringComparison.Ordinal)),
                    ("META-INF/documentsignatures.xml", "<x/>")
                ),
                rows
            )
        );
        Assert.Null(ClearedOpenRows.In([1, 2, 3], rows));
    }

    /// <summary>Two equal empty rows stand once, with a count, before the last student.</summary>
    private static byte[] List()
    {
        using var book = new XLWorkbook();
        var sheet = book.AddWorksheet("Class");
        sheet.Cell("A1").SetValue("form 1");
        sheet.Cell("A3").SetValue("id");
        sheet.Cell("B3").SetValue("name");
        foreach (
            var (row, id, name, mark) in new[]
            {
                (4, "ada-berg", "Ada Berg", 6),
                (5, "ben-okoye", "Ben Okoye", 7),
                (7, "cleo-marin", "Cleo Marín", 8),
            }
        )
        {
            sheet.Cell(row, 1).SetValue(id);
            sheet.Cell(row, 2).SetValue(name);
            sheet.Cell(row, 3).SetValue(mark);
            sheet.Cell(row, 4).FormulaA1 = $"C{row}*2";
        }
        sheet.Cell("C4").Comment.AddText("Ada was away");
        sheet.Cell("B4").Style.Fill.BackgroundColor = XLColor.FromHtml("#FFEE00");
        using var stream = new MemoryStream();
        book.SaveAs(stream);
        return stream.ToArray();
    }

    private static byte[] Packed(params IEnumerable<(string Name, string Text)> parts)
    {
        using var stream = new MemoryStream();
        using (var package = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in parts)
            {
                using var part = new StreamWriter(package.CreateEntry(name).Open());
                part.Write(text);
            }
        }
        return stream.ToArray();
    }
}
