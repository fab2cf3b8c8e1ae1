using ClassKit.Workbooks.Returned.OpenDocument;

namespace ClassKit.Workbooks.Tests.Returned;

/// <summary>
/// Formulas of OpenDocument files. The left sides are written by the rules of OASIS OpenFormula 1.3, sections 5.5.11, 5.8 and 5.13.
/// </summary>
public sealed class OpenFormulaTextTests
{
    [Theory]
    [InlineData("of:=[.C7]*[.C8]", "C7*C8")]
    [InlineData("of:=SUM([.C7:.C9];[.$D$1])", "SUM(C7:C9,$D$1)")]
    [InlineData("of:=[$Sheet2.B2]+[$'Start here'.C4]", "Sheet2!B2+'Start here'!C4")]
    [InlineData("of:=SUM([Sheet2.B2:Sheet2.B9])", "SUM(Sheet2!B2:B9)")]
    [InlineData("of:=[$'It''s. done'.B2]", "'It''s. done'!B2")]
    [InlineData("of:=IF([.C7]>0;\"a;b|[.C7]\";\"\")", "IF(C7>0,\"a;b|[.C7]\",\"\")")]
    [InlineData("of:={1;2|3;4}", "{1,2;3,4}")]
    [InlineData("of:=SUM([.A1:.B2]![.B2:.C3])", "SUM(A1:B2 B2:C3)")]
    [InlineData("of:=SUM([.A1]~[.B2])", "SUM(A1,B2)")]
    [InlineData("of:=[.#REF!]+1", "#REF!+1")]
    [InlineData("of:=[$Sheet2.#REF!]+1", "#REF!+1")]
    [InlineData("of:=COM.MICROSOFT.CONCAT([.A1];[.B1])", "CONCAT(A1,B1)")]
    [InlineData("of:==hydration_flour*65%", "hydration_flour*65%")]
    [InlineData("msoxl:=SUM(A1,B2)", "SUM(A1,B2)")]
    [InlineData("of:=SUM([.A:.A])", "SUM(A:A)")]
    public void A_stored_formula_is_read_as_a_cell_formula(string stored, string formula) =>
        Assert.Equal(formula, OpenFormulaText.ToCellFormula(stored));
}
