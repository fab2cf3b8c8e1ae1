using ClassKit.CellFormulas.Formulas;
using ClassKit.Wording.Formulas;

namespace ClassKit.Wording.Tests.Formulas;

/// <summary>The texts that people see when a formula is none. They are part of the product: change them knowingly.</summary>
public class SyntaxWordsTests
{
    [Theory]
    [InlineData("=2*(3+)", "      ^ found `)`, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=", " ^ found the end, expected a number, a text in quotes, a cell, a name, a function or (")]
    [InlineData("=ROUND(2.5,1", "            ^ found the end, expected an operator, a comma or )")]
    [InlineData(
        "=flour hydration*",
        "                 ^ found the end, expected a number, a text in quotes, a cell, a name, a function or ("
    )]
    [InlineData("=2 3", "   ^ found the number `3`, expected an operator or the end")]
    [InlineData("=ROUND(2.5;1)", "          ^ found `;`, which files do not use between arguments, expected an operator, a comma or )")]
    [InlineData(
        "=\"rise",
        " ^^^^^ found a text without its closing \", expected a number, a text in quotes, a cell, a name, a function or ("
    )]
    [InlineData("=B5×2", "   ^ found `×`; write * for times, expected an operator or the end")]
    [InlineData("={1,2;3}", "       ^ found `}`, expected as many elements in each row")]
    [InlineData(
        "={A1}",
        "  ^^ found the reference `A1`, expected a number, a text, TRUE, FALSE or an error value, as arrays hold no formulas"
    )]
    [InlineData(
        "='My sheet'+1",
        " ^^^^^^^^^^ found a sheet's name without the ! after it, expected a number, a text in quotes, a cell, a name, a function or ("
    )]
    [InlineData(
        "=1e400+2",
        " ^^^^^ found a number larger than a cell can hold, expected a number, a text in quotes, a cell, a name, a function or ("
    )]
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
    [InlineData(
        "='My sheet'",
        " ^^^^^^^^^^ found a sheet's name without the ! after it, expected a number, a text in quotes, a cell, a name, a function or ("
    )]
    [InlineData(
        "='My sheet!A1",
        " ^^^^^^^^^^^^ found a sheet's name without its closing ', expected a number, a text in quotes, a cell, a name, a function or ("
    )]
    [InlineData(
        "=Doughs[Flour",
        " ^^^^^^^^^^^^ found a [ without its ], expected a number, a text in quotes, a cell, a name, a function or ("
    )]
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
    [InlineData(
        "={-\"a\"}",
        "   ^^^ found the text `\"a\"`, expected a number, a text, TRUE, FALSE or an error value, as arrays hold no formulas"
    )]
    [InlineData("=\"a\":B2", "    ^ found `:`, expected an operator")]
    [InlineData("=LAMBDA(x,x)(1", "              ^ found the end, expected an operator, a comma or )")]
    [InlineData("=1)", "  ^ found `)`, expected an operator or the end")]
    public void A_caret_shows_the_place(string text, string explanation)
    {
        var parse = CellFormula.Parse(text);
        Assert.Null(parse.Formula);
        Assert.Equal(
            $"{text}\n{explanation}",
            $"{parse.Error} {SyntaxWords.Of(parse.Error!)[(SyntaxWords.Of(parse.Error!).IndexOf(':', StringComparison.Ordinal) + 2)..]}"
        );
    }

    [Fact]
    public void The_place_is_said_first() =>
        Assert.Equal(
            "character 4: found the end, expected a number, a text in quotes, a cell, a name, a function or (",
            SyntaxWords.Of(CellFormula.Parse("=1+").Error!)
        );

    [Fact]
    public void Limits_are_said_with_their_numbers()
    {
        Assert.Contains(
            "found one more level, expected at most 200 levels of parentheses, functions and signs, and 2000 operators in a row",
            SyntaxWords.Of(CellFormula.Parse(new string('(', 300)).Error!),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "found more text, expected a formula of at most 16384 characters",
            SyntaxWords.Of(CellFormula.Parse(new string('x', 17_000)).Error!),
            StringComparison.Ordinal
        );
    }
}
