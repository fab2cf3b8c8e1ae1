using ClassKit.Exercises.Cohorts;
using ClassKit.Workbooks.Erasing;
using ClassKit.Workbooks.Returned;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Tests.Erasing;

/// <summary>A class list in a workbook of somebody's own, read back by another reader than the one that changed it.</summary>
public class ClearedRowsTests
{
    private static readonly SoughtStudent Ada = new(new("ada-berg", "Ada Berg"), [new("ben-okoye", "Ben Okoye")]);

    [Fact]
    public void A_students_row_is_emptied_and_all_else_stays()
    {
        var list = List();
        var rows = StudentWorkbook.Read(list, Ada)!.Rows(Ada);
        var cleared = ClearedRows.In(list, rows)!;

        using var book = new XLWorkbook(new MemoryStream(cleared));
        var sheet = book.Worksheet("Class");
        Assert.Equal(
            ["Class of autumn", "id", "name", "ben-okoye", "Ben Okoye", "out of"],
            sheet.CellsUsed().Where(cell => !cell.HasFormula && cell.DataType == XLDataType.Text).Select(cell => cell.GetString())
        );
        Assert.Equal(("C4*2", 7.0), (sheet.Cell("D4").FormulaA1, sheet.Cell("C4").GetDouble()));
        Assert.Equal("C3*2", sheet.Cell("D3").FormulaA1);
        Assert.Equal(XLColor.FromHtml("#FFEE00"), sheet.Cell("B3").Style.Fill.BackgroundColor);
        Assert.False(StudentWorkbook.Read(cleared, Ada)!.IsNamed);

        // Not even in the parts that no cell shows.
        using var parts = new System.IO.Compression.ZipArchive(new MemoryStream(cleared));
        Assert.All(parts.Entries, part =>
        {
            using var text = new StreamReader(part.Open());
            Assert.DoesNotContain("Ada Berg", text.ReadToEnd(), StringComparison.Ordinal);
        });
        Assert.Null(ReturnedWorkbookReader.Read(cleared).Refusal);
    }

    /// <summary>To clear it would take somebody else's work.</summary>
    [Theory]
    [InlineData("10236", false)]
    [InlineData("10235", true)]
    [InlineData("", true)]
    public void A_namesakes_workbook_does_not_name_the_student(string id, bool isNamed)
    {
        using var book = new XLWorkbook();
        book.AddWorksheet("Start").Cell("A1").SetValue("Ann Lee");
        book.Worksheet(1).Cell("A2").SetValue(id);
        using var bytes = new MemoryStream();
        book.SaveAs(bytes);
        var sought = new SoughtStudent(new("10235", "Ann Lee"), [new("10236", "Ann Lee"), new("ben-okoye", "Ben Okoye")]);

        Assert.Equal(isNamed, StudentWorkbook.Read(bytes.ToArray(), sought)!.IsNamed);
    }

    [Fact]
    public void What_is_no_workbook_is_left_alone() =>
        Assert.Null(ClearedRows.In([1, 2, 3], new Dictionary<string, IReadOnlySet<int>> { ["Class"] = new HashSet<int> { 1 } }));

    private static byte[] List()
    {
        using var book = new XLWorkbook();
        var sheet = book.AddWorksheet("Class");
        sheet.Cell("A1").SetValue("Class of autumn");
        sheet.Cell("A2").SetValue("id");
        sheet.Cell("B2").SetValue("name");
        foreach (var (at, (id, name)) in new[] { ("ada-berg", "Ada Berg"), ("ben-okoye", "Ben Okoye") }.Index())
        {
            sheet.Cell(3 + at, 1).SetValue(id);
            sheet.Cell(3 + at, 2).SetValue(name);
            sheet.Cell(3 + at, 3).SetValue(6 + at);
            sheet.Cell(3 + at, 4).FormulaA1 = $"C{3 + at}*2";
        }
        sheet.Cell("B3").Style.Fill.BackgroundColor = XLColor.FromHtml("#FFEE00");
        sheet.Cell("A5").SetValue("out of");
        using var stream = new MemoryStream();
        book.SaveAs(stream);
        return stream.ToArray();
    }
}
