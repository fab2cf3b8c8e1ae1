using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Filling;

public sealed class WorkbookFillerTests
{
    private static readonly CellAddress Water = FilledWorkbook.Answer("hydration", "water");
    private static readonly CellAddress Dough = FilledWorkbook.Answer("hydration", "dough");

    [Fact]
    public void Answers_are_entered_with_what_they_come_to()
    {
        var workbook = Read(FilledWorkbook.Bytes);

        // 1200 g of flour at 65 % and 2 % of salt
        Assert.Equal(new CellContent(CellValue.FromNumber(780), "C7*C8"), workbook.Find(Water));
        Assert.Equal(new CellContent(CellValue.FromNumber(1200 + 780 + 24), "C7+C12+hydration_flour*hydration_salt"), workbook.Find(Dough));
        Assert.Equal(new CellContent(CellValue.FromNumber(0.6)), workbook.Find(FilledWorkbook.Answer("hydration", "share")));
        Assert.Equal(
            new CellContent(CellValue.FromText("76,5")),
            workbook.Find(FilledWorkbook.Answer("water_temperature", "base_temperature"))
        );
        Assert.Equal(
            new CellContent(CellValue.FromError(CellError.DivideByZero), "C7/0"),
            workbook.Find(FilledWorkbook.Answer("water_temperature", "water"))
        );
        Assert.Equal(76.5, workbook.Find(FilledWorkbook.Scratch("hydration", 0))!.Stored.Number);
        Assert.Equal(new CellContent(CellValue.FromText("=not a formula")), workbook.Find(FilledWorkbook.Scratch("hydration", 1)));
        Assert.Null(workbook.Find(FilledWorkbook.Answer("soda", "acid")));
    }

    [Fact]
    public void Filling_twice_gives_the_same_bytes_in_any_culture()
    {
        WorkbookEdit[] edits = [new EnterFormula(Water, "=C7*0.65"), new EnterNumber(Dough, 2004.5), new PastePicture(Dough)];
        var filled = WorkbookFiller.Fill(FilledWorkbook.Dealt, edits);
        using var _ = new CommaDecimals();

        Assert.Equal(filled, WorkbookFiller.Fill(FilledWorkbook.Dealt, edits));
    }

    [Fact]
    public void A_row_inserted_moves_what_is_below_with_its_formulas_and_names()
    {
        var workbook = Read(WorkbookFiller.Fill(FilledWorkbook.Bytes, [new InsertRow(Water.Sheet, Water.Row)]));

        Assert.Null(workbook.Find(Water));
        Assert.Equal("C7*C8", workbook.Find(Water with { Row = Water.Row + 1 })!.Formula);
        Assert.Equal("C7+C13+hydration_flour*hydration_salt", workbook.Find(Dough with { Row = Dough.Row + 1 })!.Formula);
        Assert.EndsWith("$C$13", workbook.FindName("hydration_water")!.Formula, StringComparison.Ordinal);
        Assert.EndsWith("$C$8", workbook.FindName("hydration_hydration")!.Formula, StringComparison.Ordinal);
    }

    [Fact]
    public void A_given_can_be_overwritten_and_what_follows_from_it_is_computed_anew()
    {
        var workbook = Read(WorkbookFiller.Fill(FilledWorkbook.Bytes, [new EnterNumber(FilledWorkbook.Given("hydration", "flour"), 1000)]));

        Assert.Equal(650, workbook.Find(Water)!.Stored.Number);
    }

    [Fact]
    public void A_name_can_be_deleted_and_formulas_that_use_it_say_so()
    {
        var workbook = Read(WorkbookFiller.Fill(FilledWorkbook.Bytes, [new DeleteName("hydration_salt")]));

        Assert.Null(workbook.FindName("hydration_salt"));
        Assert.Equal(CellValue.FromError(CellError.Name), workbook.Find(Dough)!.Stored);
    }

    [Fact]
    public void A_picture_changes_no_cell()
    {
        var pasted = WorkbookFiller.Fill(
            FilledWorkbook.Bytes,
            [new PastePicture(FilledWorkbook.Scratch("hydration", 3)), new PastePicture(FilledWorkbook.Scratch("soda", 3))]
        );

        Assert.Equal(Cells(Read(FilledWorkbook.Bytes)), Cells(Read(pasted)));
    }

    [Fact]
    public void An_edit_of_what_is_not_there_is_a_caller_s_mistake()
    {
        Assert.Throws<ArgumentException>(() => WorkbookFiller.Fill(FilledWorkbook.Dealt, [new EnterNumber(new("Nowhere", 1, 1), 1)]));
        Assert.Throws<ArgumentException>(() => WorkbookFiller.Fill(FilledWorkbook.Dealt, [new DeleteName("nothing")]));
    }

    private static WorkbookSnapshot Read(byte[] file) => ReturnedWorkbookReader.Read(file).Workbook!;

    private static IEnumerable<string> Cells(WorkbookSnapshot workbook) =>
        workbook.Sheets.SelectMany(sheet => sheet.Cells.OrderBy(cell => cell.Key).Select(cell => $"{sheet.Name} {cell}"));
}
