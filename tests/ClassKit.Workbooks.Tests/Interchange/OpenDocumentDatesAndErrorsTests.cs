using System.Text;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Workbooks.Returned;

namespace ClassKit.Workbooks.Tests.Interchange;

/// <summary>Dates and errors as LibreOffice stores them in .ods files: what it computed is what we compute.</summary>
/// <remarks>
/// OpenDocument 1.3 Part 3, 9.4.2 (table:null-date), 19.370 and 19.383 (office:date-value, office:value-type); Part 4 (OpenFormula), 4.3.3
/// (dates).
/// </remarks>
public sealed class OpenDocumentDatesAndErrorsTests
{
    private static readonly string[] DateFormulas =
    [
        "[.A1]+1",
        "[.A1]-[.A2]",
        "YEAR([.A1])",
        "MONTH([.A1])",
        "DAY([.A1])",
        "WEEKDAY([.A1])",
        "DATE(1950;3;1)-[.A1]",
        "DATE(1904;1;2)",
        "DATEVALUE(\"1950-01-01\")-0",
        "[.A1]-0",
        "EDATE([.A1];1)-0",
        "EOMONTH([.A1];0)-0",
        "DAYS(DATE(2024;5;5);[.A1])",
        "WEEKNUM([.A1];2)",
        "DATEDIF([.A1];[.A2];\"md\")",
        "TEXT([.A1];\"yyyy-mm-dd\")",
        "[.A3]*24",
    ];

    private static readonly (string NullDate, string Date, DateSystem System)[] Calendars =
    [
        ("1899-12-30", "2000-01-01", DateSystem.From1899),
        ("1899-12-30", "1900-01-15", DateSystem.From1899),
        ("1899-12-30", "1900-02-28", DateSystem.From1899),
        ("1899-12-30", "1900-03-01", DateSystem.From1899),
        ("1904-01-01", "2000-01-01", DateSystem.From1904),
        ("1904-01-01", "1904-01-31", DateSystem.From1904),
    ];

    /// <summary>All in one run of LibreOffice, which takes longer to start than to compute.</summary>
    [Fact]
    public void Dates_are_what_they_are_in_every_calendar()
    {
        var saved = LibreOffice.Convert(
            [
                .. Calendars.Select(calendar =>
                    Flat(
                        calendar.NullDate,
                        $"""
                        <table:table-row><table:table-cell office:value-type="date" office:date-value="{calendar.Date}"/>{Cells(
                            DateFormulas
                        )}</table:table-row>
                        <table:table-row><table:table-cell office:value-type="date" office:date-value="2024-05-05T12:00:00"/></table:table-row>
                        <table:table-row><table:table-cell office:value-type="time" office:time-value="PT13H30M00S"/></table:table-row>
                        """
                    )
                ),
            ],
            "ods"
        );

        foreach (var (calendar, workbook) in Calendars.Zip(saved.Select(Read)))
        {
            Assert.Equal(calendar.System, workbook.Dates);
            Assert.Equal(DateFormulas.Length, AssertComputesWhatIsStored(workbook));
        }
    }

    /// <summary>Only LibreOffice's own calendar goes further back than the year that it begins with.</summary>
    [Fact]
    public void Days_before_the_first_one_are_negative()
    {
        var saved = SavedByLibreOffice(
            "1899-12-30",
            $"""
            <table:table-row><table:table-cell office:value-type="date" office:date-value="1899-12-01"/>{Cells(
                "[.A1]-0",
                "YEAR([.A1])",
                "WEEKDAY([.A1])",
                "DATE(1850;6;1)-0"
            )}</table:table-row>
            """
        );

        Assert.Equal(-29, saved.Find(new("Sheet1", 1, 1))!.Stored.Number);
        Assert.Equal(4, AssertComputesWhatIsStored(saved));
    }

    [Fact]
    public void Errors_are_read_as_errors_and_computed_again()
    {
        var saved = SavedByLibreOffice(
            "1899-12-30",
            $"""
            <table:table-row><table:table-cell/>{Cells(
                "1/0",
                "NA()",
                "nosuch",
                "\"a\"+1",
                "#DIV/0!",
                "#N/A",
                "#VALUE!",
                "IFERROR(#VALUE!;7)",
                "ISERROR([.B1])",
                "SUM([.B1];[.C1])",
                "\"#N/A\"",
                "IF(ISNA([.C1]);1;2)"
            )}</table:table-row>
            <table:table-row><table:table-cell office:value-type="string"><text:p>#N/A</text:p></table:table-cell></table:table-row>
            """
        );

        CellValue At(int column) => saved.Find(new("Sheet1", 1, column))!.Stored;
        Assert.Equal(
            [CellError.DivideByZero, CellError.NotAvailable, CellError.Name, CellError.Value, CellError.DivideByZero],
            Enumerable.Range(2, 5).Select(column => At(column).Error)
        );
        Assert.Equal(CellValue.FromText("#N/A"), At(12)); // a text that a formula makes, and not an error
        Assert.Equal(CellValue.FromText("#N/A"), saved.Find(new("Sheet1", 2, 1))!.Stored); // typed
        Assert.Equal(12, AssertComputesWhatIsStored(saved));
    }

    /// <summary>LibreOffice shows errors of its own by number; where it writes an .xlsx they become the standard ones.</summary>
    [Fact]
    public void Numbered_errors_are_what_LibreOffice_itself_makes_of_them_in_an_xlsx()
    {
        string[] formulas = ["SQRT(-1)", "1E308*10", "[.F2]+1", "INDEX([.A1:.A2];9)", "BASE(5;99)", "1+", "[.E2]+1", "FACT(200)"];
        var flat = Flat("1899-12-30", $"<table:table-row/><table:table-row><table:table-cell/>{Cells(formulas)}</table:table-row>");
        var openDocument = Read(LibreOffice.Convert(flat, "ods"));
        var workbook = Read(LibreOffice.Convert(flat, "xlsx:Calc MS Excel 2007 XML"));

        for (var column = 2; column < formulas.Length + 2; column++)
        {
            var cell = new CellAddress("Sheet1", 2, column);
            Assert.Equal(workbook.Find(cell)!.Stored, openDocument.Find(cell)!.Stored);
        }
    }

    private static int AssertComputesWhatIsStored(WorkbookSnapshot saved)
    {
        var evaluator = new WorkbookEvaluator(saved);
        var formulas = saved
            .Sheets.SelectMany(sheet =>
                sheet
                    .Cells.Where(cell => cell.Value.Formula is not null)
                    .Select(cell => (Address: new CellAddress(sheet.Name, cell.Key.Row, cell.Key.Column), cell.Value))
            )
            .ToList();
        foreach (var (address, content) in formulas)
        {
            var computed = evaluator.Evaluate(address, cancellation: TestContext.Current.CancellationToken);
            Assert.True(
                Same(content.Stored, computed.Value),
                $"{address} ={content.Formula}: stored {content.Stored}, computed {computed.Value} {computed.Reason}"
            );
        }

        return formulas.Count;
    }

    private static bool Same(CellValue stored, CellValue computed) =>
        stored == computed || (stored.IsNumber && computed.IsNumber && Math.Abs(stored.Number - computed.Number) < 1e-9);

    private static WorkbookSnapshot SavedByLibreOffice(string nullDate, string rows) =>
        Read(LibreOffice.Convert(Flat(nullDate, rows), "ods"));

    private static WorkbookSnapshot Read(byte[] file)
    {
        var reading = ReturnedWorkbookReader.Read(file);
        Assert.NotNull(reading.Workbook);
        return reading.Workbook;
    }

    private static string Cells(params IEnumerable<string> formulas) =>
        string.Concat(
            formulas.Select(formula => $"<table:table-cell table:formula=\"{System.Security.SecurityElement.Escape("of:=" + formula)}\"/>")
        );

    /// <summary>A spreadsheet as one XML file, which LibreOffice opens whatever it is called.</summary>
    private static byte[] Flat(string nullDate, string rows) =>
        Encoding.UTF8.GetBytes(
            $"""
            <?xml version="1.0" encoding="UTF-8"?>
            <office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
            <office:body><office:spreadsheet><table:calculation-settings><table:null-date table:date-value="{nullDate}"/></table:calculation-settings>
            <table:table table:name="Sheet1">{rows}</table:table></office:spreadsheet></office:body></office:document>
            """
        );
}
