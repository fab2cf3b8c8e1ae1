using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Tests.Samples;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Tests.Dealing;

public sealed class DealtWorkbookWriterTests : IDisposable
{
    private readonly DealtStudent _student = SampleClass.Dealt.Students[1];
    private readonly XLWorkbook _workbook;

    public DealtWorkbookWriterTests() =>
        _workbook = new(new MemoryStream(DealtWorkbookWriter.Write(SampleClass.Dealt, _student)));

    public void Dispose() => _workbook.Dispose();

    /// <summary>A class's workbooks come from one template; each must be what laying it out cell by cell gives, to the byte.</summary>
    [Theory]
    [InlineData("Ada Lovelace", "ada-1")]
    [InlineData("Ben & Sons <\"Ü\">, the Baker", "ben-02")]
    [InlineData("王小明", "wang")]
    [InlineData("=Ben", "ben-3")]
    [InlineData("", "nameless")]
    public void A_workbook_from_the_template_is_the_one_laid_out_by_itself(string name, string id)
    {
        var writer = new DealtWorkbookWriter(SampleClass.Dealt);
        foreach (var dealt in SampleClass.Dealt.Students)
        {
            var student = dealt with { Who = new(id, name) };

            Assert.Equal(writer.LayOut(student), writer.Write(student));
        }
    }

    [Fact]
    public void Every_given_stands_where_it_was_dealt_under_its_name_and_is_locked()
    {
        Assert.All(_student.Givens, given =>
        {
            var cell = Assert.Single(_workbook.NamedRange(given.DefinedName).Ranges).FirstCell();
            Assert.Equal((given.Address.Sheet, given.Address.Cell), (cell.Worksheet.Name, cell.Address.ToString()));
            Assert.Equal((double)given.Value, cell.GetDouble());
            Assert.True(cell.Style.Protection.Locked);
        });
    }

    [Fact]
    public void Every_answer_cell_is_blank_named_and_open_to_the_student()
    {
        Assert.All(_student.Answers, answer =>
        {
            var cell = Assert.Single(_workbook.NamedRange(answer.DefinedName).Ranges).FirstCell();
            Assert.Equal((answer.Address.Sheet, answer.Address.Cell), (cell.Worksheet.Name, cell.Address.ToString()));
            Assert.True(cell.IsEmpty(XLCellsUsedOptions.Contents));
            Assert.False(cell.Style.Protection.Locked);
        });
    }

    [Fact]
    public void The_first_sheet_carries_the_student_s_id_beside_its_label()
    {
        var id = _workbook.Worksheet(1).Cell(PracticeLayout.StudentId.Cell);

        Assert.Equal(PracticeLayout.StartSheet, _workbook.Worksheet(1).Name);
        Assert.Equal("ben-02", id.GetString());
        Assert.Equal(PracticeLayout.StudentIdLabel, id.CellLeft().GetString());
        Assert.Equal(id.Address.ToString(), Assert.Single(_workbook.NamedRange(PracticeLayout.StudentIdName).Ranges).FirstCell().Address.ToString());
    }

    [Fact]
    public void A_name_that_looks_like_a_formula_is_written_as_text()
    {
        var name = _workbook.Worksheet(1).Cell("C3");

        Assert.Equal("=Ben & Sons <\"Ü\">, the Baker", name.GetString());
        Assert.False(name.HasFormula);
        Assert.True(name.Style.IncludeQuotePrefix);
    }

    [Fact]
    public void Every_row_of_an_answer_carries_its_tag_its_unit_and_what_counts()
    {
        var layout = PracticeLayout.For(SampleClass.Exercises);
        Assert.All(layout.Exercises.SelectMany(exercise => exercise.Answers), answer =>
        {
            var row = _workbook.Worksheet(answer.Address.Sheet).Row(answer.Address.Row);
            Assert.Equal(answer.Tag, row.Cell(PracticeColumns.Usual.Tag).GetString());
            Assert.Equal(answer.Part.Ask, row.Cell(PracticeColumns.Usual.Label).GetString());
            Assert.Contains(answer.Part.Unit, row.Cell(PracticeColumns.Usual.Unit).GetString(), StringComparison.Ordinal);
            Assert.Contains(answer.Part.FormulaAsked ? "Formula asked" : "A number is enough", row.Cell(PracticeColumns.Usual.Note).GetString(), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void The_problem_is_told_with_the_student_s_own_values_and_without_markup()
    {
        Assert.StartsWith(
            "A team mixes a dough for griddle buns with 1350\u00A0g of flour at 71\u00A0% hydration. The salt is 2.0\u00A0% of the flour.",
            _workbook.Worksheet(2).Cell("A4").GetString(),
            StringComparison.Ordinal);
        Assert.Contains("\n• the room at 23\u00A0°C,\n", _workbook.Worksheet(3).Cell("A4").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Sheets_are_protected_without_a_password_and_leave_room_to_work()
    {
        Assert.All(_workbook.Worksheets, sheet =>
        {
            Assert.True(sheet.Protection.IsProtected);
            Assert.False(sheet.Protection.IsPasswordProtected);
            Assert.True(sheet.Protection.AllowedElements.HasFlag(XLSheetProtectionElements.InsertRows | XLSheetProtectionElements.FormatCells));
        });
        var scratch = PracticeLayout.For(SampleClass.Exercises).Exercises[0].ScratchTo;
        Assert.False(_workbook.Worksheet(scratch.Sheet).Cell(scratch.Cell).Style.Protection.Locked);
    }

    [Fact]
    public void A_percentage_is_stored_as_a_fraction_and_shown_times_a_hundred()
    {
        var hydration = _workbook.NamedRange("hydration_hydration").Ranges.First().FirstCell();

        Assert.Equal(0.71, hydration.GetDouble());
        Assert.Equal("0 %", hydration.Style.NumberFormat.Format);
    }

    [Fact]
    public void A_student_dealt_on_other_places_is_a_caller_s_mistake()
    {
        var moved = _student with { Givens = [.. _student.Givens.Skip(1)] };

        Assert.Throws<ArgumentException>(() => DealtWorkbookWriter.Write(SampleClass.Dealt, moved));
    }
}
