using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Interchange;

/// <summary>Workbooks come back through programs that rewrite every part of them.</summary>
public sealed class OtherProgramsTests
{
    [Fact]
    public void A_workbook_saved_again_by_LibreOffice_reads_the_same()
    {
        var saved = Read(LibreOffice.SaveAgain(FilledWorkbook.Bytes));

        AssertDealtPlaces(saved);
        AssertAnswers(saved, hasValues: true);
    }

    [Fact]
    public void A_workbook_saved_as_OpenDocument_reads_the_same()
    {
        var saved = Read(LibreOffice.Convert(FilledWorkbook.Bytes, "ods"));

        AssertDealtPlaces(saved);
        AssertAnswers(saved, hasValues: true);
        Assert.Equal(Read(FilledWorkbook.Bytes).Sheets.Select(sheet => sheet.Name), saved.Sheets.Select(sheet => sheet.Name));
        Assert.Equal(
            Read(FilledWorkbook.Bytes).Sheets.Select(sheet => sheet.Merged.Count),
            saved.Sheets.Select(sheet => sheet.Merged.Count)
        );
    }

    [Fact]
    public void A_workbook_saved_again_by_openpyxl_reads_the_same_without_values()
    {
        var saved = Read(OpenPyXl.Run(FilledWorkbook.Bytes, "").Saved);

        AssertDealtPlaces(saved);
        AssertAnswers(saved, hasValues: false);
    }

    [Fact]
    public void LibreOffice_computes_the_values_that_we_store()
    {
        // openpyxl drops every stored value, so that what comes back was computed by LibreOffice.
        var ours = Read(FilledWorkbook.Bytes);
        var theirs = Read(LibreOffice.SaveAgain(OpenPyXl.Run(FilledWorkbook.Bytes, "").Saved));

        var formulas = ours
            .Sheets.SelectMany(sheet =>
                sheet
                    .Cells.Where(cell => cell.Value.Formula is not null)
                    .Select(cell => new CellAddress(sheet.Name, cell.Key.Row, cell.Key.Column))
            )
            .ToList();
        // Four typed in, and how many are answered on each of the three sheets.
        Assert.Equal(4 + 3, formulas.Count);
        Assert.All(formulas, cell => Assert.Equal(ours.Find(cell)!.Stored, theirs.Find(cell)!.Stored));
    }

    [Fact]
    public void Cells_filled_by_openpyxl_through_their_names_are_found()
    {
        var saved = Read(
            OpenPyXl
                .Run(
                    FilledWorkbook.Dealt,
                    """
                    for name, entry in {"hydration_water": "=C7*C8", "hydration_dough": 2004, "soda_acid": "8.1 g"}.items():
                        sheet, cell = list(w.defined_names[name].destinations)[0]
                        w[sheet][cell] = entry
                    """
                )
                .Saved
        );

        AssertDealtPlaces(saved);
        Assert.Equal("C7*C8", saved.Find(FilledWorkbook.Answer("hydration", "water"))!.Formula);
        Assert.Equal(2004, saved.Find(FilledWorkbook.Answer("hydration", "dough"))!.Stored.Number);
        Assert.Equal("8.1 g", saved.Find(FilledWorkbook.Answer("soda", "acid"))!.Stored.Text);
    }

    [Fact]
    public void An_inserted_row_and_a_picture_survive_LibreOffice()
    {
        var water = FilledWorkbook.Answer("hydration", "water");
        var saved = LibreOffice.SaveAgain(
            WorkbookFiller.Fill(
                FilledWorkbook.Bytes,
                [new InsertRow(water.Sheet, water.Row), new PastePicture(FilledWorkbook.Scratch("soda", 2))]
            )
        );
        var workbook = Read(saved);

        Assert.Equal("C7*C8", workbook.Find(water with { Row = water.Row + 1 })!.Formula);
        Assert.EndsWith("$C$13", workbook.FindName("hydration_water")!.Formula, StringComparison.Ordinal);
        Assert.Contains("xl/media/image1.png", Entries(saved));
    }

    [Theory]
    [InlineData("xls", FileKind.OldWorkbook)]
    [InlineData("csv", FileKind.PlainText)]
    [InlineData("html", FileKind.WebPage)]
    [InlineData("pdf", FileKind.Pdf)]
    public void A_real_file_of_another_format_is_refused_by_its_name(string format, FileKind kind)
    {
        var refusal = ReturnedWorkbookReader.Read(LibreOffice.Convert(FilledWorkbook.Bytes, format)).Refusal!;

        Assert.Equal(new Refusal.OtherKind(kind), refusal);
    }

    private static void AssertDealtPlaces(WorkbookSnapshot workbook)
    {
        Assert.Equal("ada-01", workbook.Find(StartPlan.Usual.StudentId)!.Stored.Text);
        Assert.Equal(StartPlan.Usual.StudentId, Named(workbook, StartPlan.StudentIdName));
        Assert.All(SampleClass.Dealt.LayOut().GivensOf(FilledWorkbook.Student), given =>
        {
            Assert.Equal(given.Address, Named(workbook, given.DefinedName));
            Assert.Equal((double)given.Value, workbook.Find(given.Address)!.Stored.Number);
        });
        Assert.All(SampleClass.Dealt.LayOut().AnswersOf(FilledWorkbook.Student), answer =>
            Assert.Equal(answer.Address, Named(workbook, answer.DefinedName))
        );
        Assert.All(PracticeLayout.For(SampleClass.Exercises).Exercises.SelectMany(exercise => exercise.Answers), answer =>
            Assert.Equal(answer.Tag, workbook.Find(answer.Address with { Column = PracticeColumns.Usual.Tag })!.Stored.Text)
        );
    }

    private static void AssertAnswers(WorkbookSnapshot workbook, bool hasValues)
    {
        AssertFormula("hydration", "water", "C7*C8", CellValue.FromNumber(780));
        AssertFormula("hydration", "dough", "C7+C12+hydration_flour*hydration_salt", CellValue.FromNumber(2004));
        AssertFormula("water_temperature", "water", "C7/0", CellValue.FromError(CellError.DivideByZero));
        Assert.Equal(0.6, workbook.Find(FilledWorkbook.Answer("hydration", "share"))!.Stored.Number);
        Assert.Equal("76,5", workbook.Find(FilledWorkbook.Answer("water_temperature", "base_temperature"))!.Stored.Text);
        Assert.Null(workbook.Find(FilledWorkbook.Answer("soda", "acid")));

        void AssertFormula(string exercise, string part, string formula, CellValue value)
        {
            var cell = workbook.Find(FilledWorkbook.Answer(exercise, part))!;
            Assert.Equal(formula, cell.Formula);
            Assert.Equal(hasValues ? value : CellValue.Blank, cell.Stored);
        }
    }

    private static CellAddress Named(WorkbookSnapshot workbook, string name)
    {
        var formula = workbook.FindName(name)!.Formula;
        var mark = formula.LastIndexOf('!');
        Assert.True(CellAddress.TryParse(formula[..mark].Trim('\''), formula.AsSpan(mark + 1), out var address), formula);
        return address;
    }

    private static List<string> Entries(byte[] file)
    {
        using var archive = new System.IO.Compression.ZipArchive(new MemoryStream(file));
        return [.. archive.Entries.Select(entry => entry.FullName)];
    }

    private static WorkbookSnapshot Read(byte[] file)
    {
        var reading = ReturnedWorkbookReader.Read(file);
        Assert.Null(reading.Refusal);
        return reading.Workbook!;
    }
}
