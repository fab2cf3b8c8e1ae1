using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.CellFormulas.Tests.Syntax;

/// <summary>Where a text stops being a formula. What is said of it is tested where the words are.</summary>
public class SyntaxErrorTests
{
    [Fact]
    public void Only_the_neighbourhood_of_the_place_is_shown_of_a_long_text()
    {
        var error = CellFormula
            .Parse("=" + string.Concat(Enumerable.Repeat("1+", 200)) + "*" + string.Concat(Enumerable.Repeat("1+", 200)))
            .Error!;
        var lines = error.ToString().Split('\n');
        Assert.True(lines[0].Length < 140);
        Assert.Equal('*', lines[0][lines[1].IndexOf('^', StringComparison.Ordinal)]);
    }

    [Fact]
    public void Nothing_is_too_deep_or_too_long_to_be_refused_politely()
    {
        string[] texts =
        [
            new('(', 100_000),
            "=" + new string('-', 16_000) + "1",
            "=" + string.Concat(Enumerable.Repeat("ABS(", 3_000)),
            "=1" + string.Concat(Enumerable.Repeat("+1", 8_000)),
            "=1" + new string('%', 10_000),
            "=" + new string('x', 20_000),
            "={" + new string('{', 10_000),
            "=A1" + string.Concat(Enumerable.Repeat(" A1", 5_000)),
            "=A1" + string.Concat(Enumerable.Repeat(":A1", 5_000)),
            "=" + string.Concat(Enumerable.Repeat("f(1)", 1)) + string.Concat(Enumerable.Repeat("(1)", 4_000)),
        ];
        foreach (var text in texts)
            Assert.NotNull(CellFormula.Parse(text).Error);
    }

    /// <summary>No limit is reached by what stands side by side: each of three hundred is as shallow as the first.</summary>
    [Theory]
    [InlineData("(1)")]
    [InlineData("-1")]
    [InlineData("ABS(1)")]
    [InlineData("1%")]
    [InlineData("{1,2}")]
    [InlineData("LAMBDA(x,x)(1)")]
    public void Side_by_side_is_not_deep(string one) =>
        Assert.NotNull(CellFormula.Parse("=" + string.Join('+', Enumerable.Repeat(one, 300))).Formula);

    /// <summary>As many as are allowed are read, and one more is refused in words. The outermost level is the formula itself.</summary>
    [Theory]
    [InlineData(199, "(", "1", ")")]
    [InlineData(199, "-", "1", "")]
    [InlineData(199, "ABS(", "1", ")")]
    [InlineData(200, "", "1", "%")]
    [InlineData(2000, "", "1", "+1")]
    [InlineData(2000, "", "1", "&1")]
    [InlineData(2000, "", "A1", " A1")]
    [InlineData(2000, "", "A1", ":f(1)")]
    [InlineData(200, "", "LAMBDA(x,x)", "(1)")]
    public void The_deepest_that_is_allowed_is_read_and_nothing_deeper(int most, string before, string inner, string after)
    {
        string Of(int levels) =>
            "=" + string.Concat(Enumerable.Repeat(before, levels)) + inner + string.Concat(Enumerable.Repeat(after, levels));

        Assert.NotNull(CellFormula.Parse(Of(most)).Formula);
        var error = CellFormula.Parse(Of(most + 1)).Error!;
        Assert.Equal((new SyntaxFound(SyntaxFoundKind.OneMoreLevel), SyntaxExpected.FewerLevels), (error.Found, error.Expected));
    }

    [Fact]
    public void The_longest_that_is_allowed_is_read_and_nothing_longer()
    {
        static string Of(int length) => "=\"" + new string('x', length - 3) + "\"";

        Assert.NotNull(CellFormula.Parse(Of(16_384)).Formula);
        var error = CellFormula.Parse(Of(16_385)).Error!;
        Assert.Equal(
            (new SyntaxFound(SyntaxFoundKind.MoreText), SyntaxExpected.ShorterFormula, 16_384),
            (error.Found, error.Expected, error.Position)
        );
    }

    [Fact]
    public void A_formula_known_to_be_good_that_is_not_says_where()
    {
        var error = Assert.Throws<FormatException>(() => CellFormula.Of("=1+"));
        Assert.Equal("=1+\n   ^", error.Message);
    }
}
