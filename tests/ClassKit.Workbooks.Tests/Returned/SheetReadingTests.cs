using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Returned;

/// <summary>What files may say of a cell: ECMA-376 Part 1, 18.3.1.4 (c), 18.3.1.40 (f), 18.4.8 (si), 18.18.11 (types).</summary>
public sealed class SheetReadingTests
{
    [Theory]
    [InlineData("""<c r="A1"><v>0.65</v></c>""", "Number:0.65")]
    [InlineData("""<c r="A1" t="n"><v>1.5E-3</v></c>""", "Number:0.0015")]
    [InlineData("""<c r="A1" t="s"><v>1</v></c>""", "Text:water")]
    [InlineData("""<c r="A1" t="inlineStr"><is><t>182 g</t></is></c>""", "Text:182 g")]
    [InlineData("""<c r="A1" t="str"><f>A2</f><v>on ice</v></c>""", "Text:on ice")]
    [InlineData("""<c r="A1" t="str"><f>A2</f><v></v></c>""", "Text:")]
    [InlineData("""<c r="A1" t="b"><v>1</v></c>""", "Logical:TRUE")]
    [InlineData("""<c r="A1" t="e"><f>1/0</f><v>#DIV/0!</v></c>""", "Error:#DIV/0!")]
    [InlineData("""<c r="A1" t="e"><v>#SPILL!</v></c>""", "Error:#VALUE!")]
    [InlineData("""<c r="A1" t="d"><v>2000-01-01T12:00:00</v></c>""", "Number:36526.5")]
    [InlineData("""<c r="A1"><f>A2*2</f></c>""", "Blank:")]
    [InlineData("""<c r="A1"><f>A2*2</f><v/></c>""", "Blank:")]
    [InlineData("""<c r="A1"><v>1E400</v></c>""", "Error:#NUM!")]
    public void Every_type_of_value_is_read(string cell, string value)
    {
        var content = HandMade.Sheet($"""<row r="1">{cell}</row>""", "<si><t>flour</t></si><si><t>water</t></si>").Cell("A1");

        Assert.Equal(value, $"{content!.Stored.Kind}:{content.Stored}");
    }

    [Theory]
    [InlineData("""<c r="A1" s="3"/>""")]
    [InlineData("""<c r="A1" t="s"/>""")]
    [InlineData("""<c r="A1" t="s"><v></v></c>""")]
    [InlineData("""<c r="A1"><f></f><v></v></c>""")]
    public void A_cell_with_only_a_look_is_empty(string cell)
    {
        Assert.Empty(HandMade.Sheet($"""<row r="1">{cell}</row>""").Read().Sheets[0].Cells);
    }

    [Theory]
    [InlineData("<si><r><t>12</t></r><r><rPr><b/></rPr><t xml:space=\"preserve\"> g </t></r></si>", "12 g ")]
    [InlineData("<si><t>東京</t><rPh sb=\"0\" eb=\"2\"><t>トウキョウ</t></rPh></si>", "東京")]
    [InlineData("<si><t>a_x000D_\nb</t></si>", "a\r\nb")]
    [InlineData("<si><t>a_x005F_x000D_b</t></si>", "a_x000D_b")]
    [InlineData("<si><t><![CDATA[<b>]]> &amp; more</t></si>", "<b> & more")]
    [InlineData("<si><t>bell&#7;</t></si>", "bell\a")]
    [InlineData("<si/>", "")]
    public void Texts_come_as_they_are_shown(string item, string text)
    {
        Assert.Equal(text, HandMade.Sheet("""<row r="1"><c r="A1" t="s"><v>0</v></c></row>""", item).Cell("A1")!.Stored.Text);
    }

    [Fact]
    public void Cells_and_rows_that_do_not_say_where_they_are_follow_the_ones_before()
    {
        var sheet = HandMade.Sheet(
            """<row><c><v>1</v></c><c><v>2</v></c></row><row r="5"><c r="C5"><v>3</v></c><c><v>4</v></c></row><row><c><v>5</v></c></row>"""
        );

        Assert.Equal(
            [(1, 1, 1.0), (1, 2, 2.0), (5, 3, 3.0), (5, 4, 4.0), (6, 1, 5.0)],
            sheet.Read().Sheets[0].Cells.Select(cell => (cell.Key.Row, cell.Key.Column, cell.Value.Stored.Number)).Order()
        );
    }

    [Fact]
    public void A_shared_formula_is_written_out_for_every_cell()
    {
        var sheet = HandMade.Sheet(
            """
            <row r="2"><c r="B2"><f t="shared" ref="B2:B4" si="0">A2*$A$1+SUM(A$1:A2)</f><v>1</v></c></row>
            <row r="3"><c r="B3"><f t="shared" si="0"/><v>2</v></c></row>
            <row r="4"><c r="B4"><f t="shared" si="0"></f><v>3</v></c><c r="C4"><f t="shared" si="0">A4</f></c></row>
            """
        );

        Assert.Equal("A2*$A$1+SUM(A$1:A2)", sheet.Cell("B2")!.Formula);
        Assert.Equal("A3*$A$1+SUM(A$1:A3)", sheet.Cell("B3")!.Formula);
        Assert.Equal("A4*$A$1+SUM(A$1:A4)", sheet.Cell("B4")!.Formula);
        Assert.Equal("A4", sheet.Cell("C4")!.Formula);
        Assert.Equal(2, sheet.Cell("B3")!.Stored.Number);
    }

    [Fact]
    public void The_cell_that_leads_a_shared_formula_may_come_last()
    {
        var sheet = HandMade.Sheet(
            """
            <row r="2"><c r="B2"><f t="shared" si="7"/></c></row>
            <row r="3"><c r="B3"><f t="shared" ref="B2:B3" si="7">A3+1</f></c></row>
            """
        );

        Assert.Equal("A2+1", sheet.Cell("B2")!.Formula);
    }

    [Fact]
    public void A_shared_formula_without_its_leader_is_damage()
    {
        var reading = ReturnedWorkbookReader.Read(HandMade.Sheet("""<row r="2"><c r="B2"><f t="shared" si="7"/></c></row>""").ToBytes());

        Assert.Equal(new Refusal.Damaged(new Damage.SharedFormula("B2")), reading.Refusal);
    }

    [Fact]
    public void An_array_formula_says_which_range_it_fills()
    {
        var sheet = HandMade.Sheet(
            """<row r="2"><c r="B2"><f t="array" ref="B2:B3">A2:A3*2</f><v>2</v></c></row><row r="3"><c r="B3"><v>4</v></c></row>"""
        );

        Assert.Equal(new CellContent(CellValue.FromNumber(2), "A2:A3*2", "B2:B3"), sheet.Cell("B2"));
        Assert.Equal(new CellContent(CellValue.FromNumber(4)), sheet.Cell("B3"));
    }

    [Fact]
    public void A_what_if_table_is_a_formula_that_only_its_program_computes()
    {
        var sheet = HandMade.Sheet("""<row r="2"><c r="B2"><f t="dataTable" ref="B2:B3" dt2D="0" r1="A1"/><v>2</v></c></row>""");

        Assert.Equal("TABLE()", sheet.Cell("B2")!.Formula);
    }

    public static TheoryData<string, Damage> Nonsense =>
        new()
        {
            { """<row r="1"><c r="A1"><v>1,5</v></c></row>""", new Damage.NoNumber(new("S"), "A1", new("1,5"), IsDate: false) },
            { """<row r="1"><c r="A1" t="s"><v>3</v></c></row>""", new Damage.MissingText(new("S", 1, 1)) },
            { """<row r="1"><c r="1A"><v>1</v></c></row>""", new Damage.CellName(new("S"), new("1A")) },
            { """<row r="0"><c r="A1"><v>1</v></c></row>""", new Damage.RowNumber(new("S"), new("0")) },
            { """<row r="1048577"><c><v>1</v></c></row>""", new Damage.RowNumber(new("S"), new("1048577")) },
            { """<row r="1"><c r="XFD1"><v>1</v></c><c><v>2</v></c></row>""", new Damage.BeyondSheet(new("S")) },
            {
                """<row r="1"><c r="A1" t="d"><v>yesterday</v></c></row>""",
                new Damage.NoNumber(new("S"), "A1", new("yesterday"), IsDate: true)
            },
        };

    [Theory]
    [MemberData(nameof(Nonsense))]
    public void Nonsense_in_a_cell_is_refused_rather_than_guessed(string rows, Damage damage) =>
        Assert.Equal(new Refusal.Damaged(damage), ReturnedWorkbookReader.Read(HandMade.Sheet(rows).ToBytes()).Refusal);

    [Fact]
    public void Hidden_rows_are_kept_and_whether_a_filter_hides_them()
    {
        const string rows = """<row r="1"><c r="A1"><v>1</v></c></row><row r="2" hidden="1"><c r="A2"><v>2</v></c></row>""";
        var sheet = HandMade.Sheet(rows).Read().Sheets[0];
        Assert.Equal([2], sheet.HiddenRows);
        Assert.Null(sheet.FilteredRows);

        const string filter =
            """</sheetData><autoFilter ref="A1:A2"><filterColumn colId="0"><filters><filter val="1"/></filters></filterColumn></autoFilter>""";
        Assert.Equal(
            (2, 2),
            HandMade.Sheet(rows).Replace("xl/worksheets/sheet1.xml", "</sheetData>", filter).Read().Sheets[0].FilteredRows
        );
    }
}
