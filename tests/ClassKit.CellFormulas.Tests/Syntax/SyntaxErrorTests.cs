using ClassKit.CellFormulas.Formulas;

namespace ClassKit.CellFormulas.Tests.Syntax;

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
    [InlineData("=1e400+2", " ^^^^^ found a number larger than a cell can hold, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=2e", "  ^ found the name `e`, expected an operator or the end")]
    [InlineData("=2e+", "  ^ found the name `e`, expected an operator or the end")]
    [InlineData("=8÷2", "  ^ found `÷`; write / for divided by, expected an operator or the end")]
    [InlineData("=8·2", "  ^ found `·`; write * for times, expected an operator or the end")]
    [InlineData("=8−2", "  ^ found `−`; write - for minus, expected an operator or the end")]
    [InlineData("=8–2", "  ^ found `–`; write - for minus, expected an operator or the end")]
    [InlineData("=“rye”", " ^ found `“`; write \" around a text, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=„rye“", " ^ found `„`; write \" around a text, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=1&”rye“", "   ^ found `”`; write \" around a text, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=!A1", " ^ found `!` without a sheet before it, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=1~2", "  ^ found `~`, expected an operator or the end")]
    [InlineData("='My sheet'", " ^^^^^^^^^^ found a sheet's name without the ! after it, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("='My sheet!A1", " ^^^^^^^^^^^^ found a sheet's name without its closing ', expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=Doughs[Flour", " ^^^^^^^^^^^^ found a [ without its ], expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=2 \"rye\"", "   ^^^^^ found the text `\"rye\"`, expected an operator or the end")]
    [InlineData("=2 flour", "   ^^^^^ found the name `flour`, expected an operator or the end")]
    [InlineData("=2 SUM(1)", "   ^^^ found the function `SUM`, expected an operator or the end")]
    [InlineData("=2 Doughs!A1", "   ^^^^^^^ found the sheet `Doughs!`, expected an operator or the end")]
    [InlineData("=Doughs! A1", "         ^^ found the reference `A1`, expected a cell or a name right after the sheet")]
    [InlineData("=Doughs! rate", "         ^^^^ found the name `rate`, expected a cell or a name right after the sheet")]
    [InlineData("=Doughs!#N/A", "        ^^^^ found `#N/A`, expected a cell or a name right after the sheet")]
    [InlineData("=Doughs! #REF!", "         ^^^^^ found `#REF!`, expected a cell or a name right after the sheet")]
    [InlineData("={1;2,3}", "       ^ found `}`, expected a row no longer than the first")]
    [InlineData("={1,2", "     ^ found the end, expected a comma, ; or }")]
    [InlineData("=(1", "   ^ found the end, expected an operator or )")]
    [InlineData("={-\"a\"}", "   ^^^ found the text `\"a\"`, expected a number, a text, TRUE, FALSE or an error value, as arrays hold no formulas")]
    [InlineData("=\"a\":B2", "    ^ found `:`, expected an operator")]
    [InlineData("=LAMBDA(x,x)(1", "              ^ found the end, expected an operator, a comma or )")]
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

    /// <summary>No limit is reached by what stands side by side: each of three hundred is as shallow as the first.</summary>
    [Theory]
    [InlineData("(1)")]
    [InlineData("-1")]
    [InlineData("ABS(1)")]
    [InlineData("1%")]
    [InlineData("{1,2}")]
    [InlineData("LAMBDA(x,x)(1)")]
    public void Side_by_side_is_not_deep(string one) => Assert.NotNull(CellFormula.Parse("=" + string.Join('+', Enumerable.Repeat(one, 300))).Formula);

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
        string Of(int levels) => "=" + string.Concat(Enumerable.Repeat(before, levels)) + inner + string.Concat(Enumerable.Repeat(after, levels));

        Assert.NotNull(CellFormula.Parse(Of(most)).Formula);
        var error = CellFormula.Parse(Of(most + 1)).Error!;
        Assert.Equal(("one more level", "at most 200 levels of parentheses, functions and signs, and 2000 operators in a row"), (error.Found, error.Expected));
    }

    [Fact]
    public void The_longest_that_is_allowed_is_read_and_nothing_longer()
    {
        static string Of(int length) => "=\"" + new string('x', length - 3) + "\"";

        Assert.NotNull(CellFormula.Parse(Of(16_384)).Formula);
        var error = CellFormula.Parse(Of(16_385)).Error!;
        Assert.Equal(("more text", "a formula of at most 16384 characters", 16_384), (error.Found, error.Expected, error.Position));
    }

    [Fact]
    public void A_formula_known_to_be_good_that_is_not_says_where()
    {
        var error = Assert.Throws<FormatException>(() => CellFormula.Of("=1+"));
        Assert.Contains("   ^ found the end", error.Message, StringComparison.Ordinal);
    }
}
