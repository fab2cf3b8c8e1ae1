using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>Which cell a formula points at and cannot use is found, and where its number stands.</summary>
public sealed class UnusableCellTests
{
    private static ReturnedBook Book => new(Ada);

    [Fact]
    public void A_label_is_told_with_the_cell_beside_it()
    {
        var want = CellOf("want");
        var label = "A" + want[1..];

        var found = Assert.IsType<AnswerFinding.ErrorValue>(Found(Book.Answer("temperature", $"=3*{label}-sum")));

        Assert.Equal((CellError.Value, label, UnusableCellKind.Words, want), (found.Error, found.By!.Cell, found.By.Kind, found.By.Beside));
    }

    [Fact]
    public void A_number_typed_with_its_unit_is_told_where_it_stands()
    {
        var scratch = "Z" + CellOf("want")[1..];
        var found = Assert.IsType<AnswerFinding.ErrorValue>(
            Found(Book.Answer("temperature", $"=3*want-{scratch}").Beside("want", column: 26, "148 °F"))
        );

        Assert.Equal((scratch, "148 °F"), (found.By!.Cell, found.By.Text!.Text));
    }

    [Fact]
    public void A_formula_that_points_at_itself_is_told_so()
    {
        var found = Assert.IsType<AnswerFinding.ErrorValue>(Found(Book.Answer("temperature", "=3*want-temperature")));

        Assert.Equal((CellError.Reference, UnusableCellKind.Itself), (found.Error, found.By!.Kind));
    }

    [Fact]
    public void Two_formulas_that_point_at_each_other_are_told_so()
    {
        var found = Assert.IsType<AnswerFinding.ErrorValue>(
            Grade(Book.Answer("sum", "=temperature+flour").Answer("temperature", "=3*want-sum"), "sum").Findings[0]
        );

        Assert.Equal(new UnusableCell(Book.CellOf("temperature"), UnusableCellKind.InTurn), found.By);
    }

    [Theory]
    [InlineData("=5*want-Z5*room", true)]
    [InlineData("=5*want-SUM(Z5:Z9)*room", false)]
    [InlineData("=5*want-room", false)]
    public void An_empty_cell_is_told_where_it_is_pointed_at_by_itself(string formula, bool isTold)
    {
        var found = Assert.IsType<AnswerFinding.NotRight>(Found(Book.Answer("temperature", formula)));

        Assert.Equal(isTold ? new UnusableCell("Z5", UnusableCellKind.Empty) : null, found.Lacks);
    }

    [Fact]
    public void What_is_divided_by_and_empty_is_told()
    {
        var found = Assert.IsType<AnswerFinding.ErrorValue>(Found(Book.Answer("temperature", "=want/Z5")));

        Assert.Equal((CellError.DivideByZero, "Z5"), (found.Error, found.By!.Cell));
    }

    private static AnswerFinding Found(ReturnedBook book) => Grade(book, "temperature").Findings[0];

    private static string CellOf(string given) => Book.CellOf(given);
}
