using System.Globalization;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Formulas;

/// <summary>Where a text stops being a formula, what stands there and what could.</summary>
public static class SyntaxWords
{
    /// <summary>All of it, such as <c>character 3: found `)`, expected an operator</c>.</summary>
    public static string Of(SyntaxError error)
    {
        ArgumentNullException.ThrowIfNull(error);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"character {error.Position + 1}: found {Of(error.Found)}, expected {Of(error.Expected)}"
        );
    }

    /// <summary>What a formula lacks that ends too early, as who wrote it would say; null for any other.</summary>
    public static string? Unfinished(SyntaxError error)
    {
        ArgumentNullException.ThrowIfNull(error);
        return (error.Found.Kind, error.Expected) switch
        {
            (SyntaxFoundKind.End, SyntaxExpected.OperatorOrClose or SyntaxExpected.OperatorCommaOrClose) =>
                "a bracket is opened and not closed",
            (SyntaxFoundKind.End, SyntaxExpected.Operand) => "it ends where a cell or a number should follow",
            _ => null,
        };
    }

    /// <summary>What stands there.</summary>
    public static string Of(SyntaxFound found)
    {
        ArgumentNullException.ThrowIfNull(found);
        var text = $"`{ShownName.Of(found.Text)}`";
        return found.Kind switch
        {
            SyntaxFoundKind.End => "the end",
            SyntaxFoundKind.MoreText => "more text",
            SyntaxFoundKind.OneMoreLevel => "one more level",
            SyntaxFoundKind.Number => $"the number {text}",
            SyntaxFoundKind.Text => $"the text {text}",
            SyntaxFoundKind.Reference => $"the reference {text}",
            SyntaxFoundKind.Name => $"the name {text}",
            SyntaxFoundKind.Function => $"the function {text}",
            SyntaxFoundKind.Sheet => $"the sheet {text}",
            SyntaxFoundKind.Semicolon => "`;`, which files do not use between arguments",
            SyntaxFoundKind.Sign => text,
            SyntaxFoundKind.TimesSign => $"{text}; write * for times",
            SyntaxFoundKind.DivisionSign => $"{text}; write / for divided by",
            SyntaxFoundKind.Dash => $"{text}; write - for minus",
            SyntaxFoundKind.PrintedQuote => $"{text}; write \" around a text",
            SyntaxFoundKind.NoSheetBefore => $"{text} without a sheet before it",
            SyntaxFoundKind.NumberTooLarge => "a number larger than a cell can hold",
            SyntaxFoundKind.OpenText => "a text without its closing \"",
            SyntaxFoundKind.OpenSheetName => "a sheet's name without its closing '",
            SyntaxFoundKind.SheetWithoutMark => "a sheet's name without the ! after it",
            SyntaxFoundKind.OpenBracket => "a [ without its ]",
        };
    }

    private static string Of(SyntaxExpected expected) =>
        expected switch
        {
            SyntaxExpected.Operand => "a number, a text in quotes, a cell, a name, a function or (",
            SyntaxExpected.Operator => "an operator",
            SyntaxExpected.OperatorOrEnd => "an operator or the end",
            SyntaxExpected.OperatorOrClose => "an operator or )",
            SyntaxExpected.OperatorCommaOrClose => "an operator, a comma or )",
            SyntaxExpected.CellOrNameOnSheet => "a cell or a name right after the sheet",
            SyntaxExpected.AsManyElements => "as many elements in each row",
            SyntaxExpected.ShorterRow => "a row no longer than the first",
            SyntaxExpected.SeparatorOrArrayEnd => "a comma, ; or }",
            SyntaxExpected.ArrayEnd => "}",
            SyntaxExpected.Element => "a number, a text, TRUE, FALSE or an error value, as arrays hold no formulas",
            SyntaxExpected.ShorterFormula => string.Create(
                CultureInfo.InvariantCulture,
                $"a formula of at most {SyntaxLimits.Length} characters"
            ),
            SyntaxExpected.FewerLevels => string.Create(
                CultureInfo.InvariantCulture,
                $"at most {SyntaxLimits.Nesting} levels of parentheses, functions and signs, and {SyntaxLimits.TreeDepth} operators in a row"
            ),
        };
}
