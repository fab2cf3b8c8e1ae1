namespace ClassKit.CellFormulas.Tests;

/// <summary>The texts that people see when a formula is none. They are part of the product: change them knowingly.</summary>
public class SyntaxErrorTests
{
    [Theory]
    [InlineData("=2*(3+)", "      ^ found `)`, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=", " ^ found the end, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=ROUND(2.5,1", "            ^ found the end, expected an operator, a comma or )")]
    [InlineData("=flour hydration*", "                 ^ found the end, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=2 3", "   ^ found the number `3`, expected an operator or the end")]
    [InlineData("=ROUND(2.5;1)", "          ^ found `;`, which files do not use between arguments, expected an operator, a comma or )")]
    [InlineData("=\"rise", " ^^^^^ found a text without its closing \", expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=B5×2", "   ^ found `×`; write * for times, expected an operator or the end")]
    [InlineData("={1,2;3}", "       ^ found `}`, expected as many elements in each row")]
    [InlineData("={A1}", "  ^^ found the reference `A1`, expected a number, a text, TRUE, FALSE or an error value, as arrays hold no formulas")]
    [InlineData("='My sheet'+1", " ^^^^^^^^^^ found a sheet's name without the ! after it, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=1)", "  ^ found `)`, expected an operator or the end")]
    public void A_caret_shows_the_place(string text, string explanation)
    {
        var parse = CellFormula.Parse(text);
        Assert.Null(parse.Formula);
        Assert.Equal(text + "\n" + explanation, parse.Error!.ToString());
    }

    [Fact]
    public void Only_the_neighbourhood_of_the_place_is_shown_of_a_long_text()
    {
        var error = CellFormula.Parse("=" + string.Concat(Enumerable.Repeat("1+", 200)) + "*" + string.Concat(Enumerable.Repeat("1+", 200))).Error!;
        var lines = error.ToString().Split('\n');
        Assert.True(lines[0].Length < 140);
        Assert.Equal('*', lines[0][lines[1].IndexOf('^', StringComparison.Ordinal)]);
    }

    [Fact]
    public void Nothing_is_too_deep_or_too_long_to_be_refused_politely()
    {
        string[] texts =
        [
            new('(', 100_000), "=" + new string('-', 16_000) + "1", "=" + string.Concat(Enumerable.Repeat("ABS(", 3_000)), "=1" + string.Concat(Enumerable.Repeat("+1", 8_000)),
            "=1" + new string('%', 10_000), "=" + new string('x', 20_000), "={" + new string('{', 10_000), "=A1" + string.Concat(Enumerable.Repeat(" A1", 5_000)),
            "=A1" + string.Concat(Enumerable.Repeat(":A1", 5_000)), "=" + string.Concat(Enumerable.Repeat("f(1)", 1)) + string.Concat(Enumerable.Repeat("(1)", 4_000)),
        ];
        foreach (var text in texts) Assert.NotNull(CellFormula.Parse(text).Error);
    }

    [Fact]
    public void A_formula_known_to_be_good_that_is_not_says_where()
    {
        var error = Assert.Throws<FormatException>(() => CellFormula.Of("=1+"));
        Assert.Contains("   ^ found the end", error.Message, StringComparison.Ordinal);
    }
}
