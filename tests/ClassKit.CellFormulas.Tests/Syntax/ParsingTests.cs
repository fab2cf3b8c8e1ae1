using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Syntax;

public class ParsingTests
{
    [Theory]
    [InlineData("flour * hydration", "=flour*hydration")]
    [InlineData("= round( 2.50 , 1 )", "=ROUND(2.5,1)")]
    [InlineData("=sum(a1 : b2 , $C$3)", "=SUM(A1:B2,$C$3)")]
    [InlineData("='My sheet'!a1+Sheet2!B2", "='My sheet'!A1+Sheet2!B2")]
    [InlineData("='It''s'!A1", "='It''s'!A1")]
    [InlineData("='Plain'!A1", "=Plain!A1")]
    [InlineData("=0607Sales!$H$2+2007!A1", "='0607Sales'!$H$2+'2007'!A1")]
    [InlineData("=SUM(A:C,$4:5)", "=SUM(A:C,$4:5)")]
    [InlineData("=A1:C3 B2:D4", "=A1:C3 B2:D4")]
    [InlineData("=SUM((A1,B2))", "=SUM((A1,B2))")]
    [InlineData("={1,-2;\"a\",TRUE}", "={1,-2;\"a\",TRUE}")]
    [InlineData("=_xlfn.IFS(A1>1,2)", "=IFS(A1>1,2)")]
    [InlineData("=_xlfn._xlws.SORT(A1:A3)", "=SORT(A1:A3)")]
    [InlineData("=_xlfn.LET(_xlpm.x,2,_xlpm.x*3)", "=LET(x,2,x*3)")]
    [InlineData("=_xlfn.SINGLE(A1:A3)", "=@A1:A3")]
    [InlineData("=SUM(_xlfn.ANCHORARRAY(A1))", "=SUM(A1#)")]
    [InlineData("=IF(A1,,2)", "=IF(A1,,2)")]
    [InlineData("=\"say \"\"rise\"\"\"", "=\"say \"\"rise\"\"\"")]
    [InlineData("=#N/A", "=#N/A")]
    [InlineData("=Sheet1!#REF!", "=#REF!")]
    [InlineData("=A1:INDEX(B1:B9,3)", "=A1:INDEX(B1:B9,3)")]
    [InlineData("=Été+naïve_1", "=Été+naïve_1")]
    [InlineData("=XFD1048576", "=XFD1048576")]
    [InlineData("=1.5e-3", "=0.0015")]
    [InlineData("=1.5e3", "=1500")]
    [InlineData("=2E+2", "=200")]
    [InlineData("=.5+5.", "=0.5+5")]
    [InlineData("=Doughs!rate", "=Doughs!rate")]
    [InlineData("=SUM(flour:water)", "=SUM(flour:water)")]
    [InlineData("=SUM(a:b.c)", "=SUM((a):b.c)")]
    [InlineData("=SUM(A1:B2 B1:B3 B2:B4)", "=SUM(A1:B2 B1:B3 B2:B4)")]
    [InlineData("=SUM(A1:INDEX(B1:B9,3) B2:B5)", "=SUM(A1:INDEX(B1:B9,3) B2:B5)")]
    [InlineData("=(A1,B2) A1:A3", "=(A1,B2) A1:A3")]
    [InlineData("=😀+1", "=😀+1")]
    [InlineData("=_xlpm.xA4", "=_xlpm.xA4")] // these were found by fuzzing
    [InlineData("=_xlpm.TRUE", "=_xlpm.TRUE")]
    [InlineData("=_xlfn.4BIN(1)", "=_XLFN.4BIN(1)")]
    [InlineData("=@A1,B1", "=@(A1,B1)")]
    [InlineData("=@-A1,B1", "=@(-A1,B1)")]
    [InlineData("=SUM(_xlpm.x:A)", "=SUM((x):(A))")]
    [InlineData("=LOG10(A1)", "=LOG10(A1)")]
    [InlineData("=\n  1\t+\r\n2", "=1+2")]
    public void A_formula_prints_in_canonical_form(string text, string canonical)
    {
        Assert.Equal(canonical, CellFormula.Of(text).ToString());
        Assert.Equal(canonical, CellFormula.Of(canonical).ToString());
    }

    [Theory]
    [InlineData("=XFE1")] // a column past the last
    [InlineData("=A1048577")] // a row past the last
    [InlineData("=A12345678")]
    [InlineData("=A1B")]
    [InlineData("=rate.1")]
    public void What_only_looks_like_a_cell_is_a_name(string text) => Assert.IsType<NameNode>(CellFormula.Of(text).Root);

    [Theory]
    [InlineData("=SUM(Doughs[Flour])")]
    [InlineData("=Doughs[[#This Row],[Flour]]*2")]
    [InlineData("=[@Flour]*2")]
    [InlineData("=SUM(Doughs[A'] b])")]
    public void A_table_that_is_not_there_is_no_syntax_error(string text) =>
        Assert.True(
            new Book { ["A1"] = text }
                .Evaluate("A1")
                .Reason
                is Obstacle.NoTable { Table: "Doughs" }
                    or Obstacle.InNoTable { Text: "[@Flour]" }
        );

    [Theory]
    [InlineData("=SUM(Sheet1:Sheet3!A1)", Construct.SeveralSheets)]
    [InlineData("=SUM('Day 1:Day 3'!A1:B2)", Construct.SeveralSheets)]
    [InlineData("=[1]Sheet1!A1", Construct.OtherWorkbook)]
    [InlineData("='[prices.xlsx]Sheet 1'!$A$1", Construct.OtherWorkbook)]
    [InlineData("=[0]!Price", Construct.OtherWorkbook)]
    [InlineData("=[1]!CASES(\"rye\",A1)", Construct.OtherWorkbooksFunction)]
    [InlineData("=['file:///home/prices.xlsx']Sheet1!A1", Construct.OtherWorkbook)]
    [InlineData("=_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1)(2)", Construct.Lambda)]
    [InlineData("=_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1)", Construct.Lambda)]
    [InlineData("=Doughs!price(1)", Construct.Macro)]
    [InlineData("=#SPILL!", Construct.NewerError)]
    [InlineData("=#CALC!", Construct.NewerError)]
    [InlineData("=#FIELD!", Construct.NewerError)]
    [InlineData("=#BLOCKED!", Construct.NewerError)]
    [InlineData("=#CONNECT!", Construct.NewerError)]
    [InlineData("=#UNKNOWN!", Construct.NewerError)]
    [InlineData("=#BUSY!", Construct.NewerError)]
    [InlineData("=#EXTERNAL!", Construct.NewerError)]
    [InlineData("=#PYTHON!", Construct.NewerError)]
    [InlineData("=#GETTING_DATA", Construct.NewerError)]
    public void What_we_do_not_evaluate_is_recognised_and_no_syntax_error(string text, Construct what)
    {
        var parse = CellFormula.Parse(text);
        Assert.NotNull(parse.Formula);
        var evaluation = new Book { ["A1"] = text }.Evaluate("A1");
        Assert.Equal(EvaluationStatus.Unsupported, evaluation.Status);
        Assert.Equal(what, Assert.IsType<Obstacle.NotEvaluated>(evaluation.Reason).What);
        Assert.Equal(
            text.Replace("_xlfn.", "", StringComparison.Ordinal),
            parse.Formula.ToString().Replace("_xlfn.", "", StringComparison.Ordinal)
        );
    }

    /// <summary>The whole range belongs to the sheets or the workbook that stand before it.</summary>
    [Theory]
    [InlineData("'Day 1:Day 3'!A1:B2")]
    [InlineData("'[prices.xlsx]Sheet 1'!$A$1:$B$2")]
    [InlineData("Sheet1:Sheet3!A1:$B2")]
    [InlineData("[1]Sheet1!A1:B22")]
    public void What_another_sheet_or_workbook_stands_before_is_taken_whole(string text)
    {
        var formula = CellFormula.Of($"=SUM({text},1)");

        Assert.Equal(text, Assert.IsType<UnsupportedNode>(Assert.IsType<CallNode>(formula.Root).Arguments[0]).Text);
        Assert.Equal(SyntaxFoundKind.End, CellFormula.Parse($"={text}:").Error!.Found.Kind);
    }

    [Fact]
    public void Every_node_knows_where_it_stands()
    {
        var formula = CellFormula.Of("= ROUND( flour * 2 , 1 )");
        var call = Assert.IsType<CallNode>(formula.Root);
        Assert.Equal("ROUND( flour * 2 , 1 )", Slice(formula, call));
        Assert.Equal("flour * 2", Slice(formula, call.Arguments[0]));
        Assert.Equal("flour", Slice(formula, Assert.IsType<BinaryNode>(call.Arguments[0]).Left));
    }

    [Fact]
    public void Names_come_once_each_in_order_of_first_use_without_those_bound_by_LET() =>
        Assert.Equal(
            ["flour", "hydration", "x"],
            CellFormula.Of("=flour*hydration+FLOUR+x+LET(x,salt_less,x+flour)").Names.Where(name => name != "salt_less")
        );

    [Fact]
    public void A_text_without_equals_sign_gets_one()
    {
        Assert.Equal("=1+1", CellFormula.Of("1+1").Text);
        Assert.Equal("= 1+1", CellFormula.Of("= 1+1").Text);
    }

    private static string Slice(CellFormula formula, FormulaNode node) => formula.Text.Substring(node.Span.Start, node.Span.Length);
}
