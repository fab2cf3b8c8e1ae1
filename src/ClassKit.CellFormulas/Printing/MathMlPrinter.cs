using System.Diagnostics;
using System.Globalization;
using System.Text;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Printing;

/// <summary>Turns a syntax tree into MathML, one element for each node.</summary>
internal sealed partial class MathMlPrinter(Func<string, MathMlOperand?> operand)
{
    public static string Operand(MathMlOperand operand)
    {
        if (!operand.IsQuantity)
            return Name(operand.Text);
        var negative = operand.Text.StartsWith('-') || operand.Text.StartsWith('\u2212');
        var number = $"<mn>{Escape(negative ? operand.Text[1..] : operand.Text)}</mn>";
        if (negative)
            number = $"<mrow><mo form=\"prefix\">\u2212</mo>{number}</mrow>";
        if (operand.Unit is null)
            return number;
        var gap = operand.Unit is "°" ? "" : "\u00a0"; // NIST SP 811, 7.2: a space before every unit, percent too, but not before the degree of an angle.
        return $"<mrow>{number}<mtext>{gap}{Escape(operand.Unit)}</mtext></mrow>";
    }

    public string Print(FormulaNode node) =>
        node switch
        {
            NumberNode number => Number(number.Value),
            TextNode text => Words($"\u201c{text.Value}\u201d"),
            LogicalNode logical => Words(logical.Value ? "true" : "false"),
            ErrorNode error => Words(CellErrorText.Of(error.Error)),
            NameNode name => operand(name.Name) is { } shown ? Operand(shown) : Name(name.Name),
            ReferenceNode reference => Reference(reference),
            GroupNode group => Fenced(Print(group.Inner)),
            PrefixNode prefix => Prefix(prefix),
            PercentNode percent => $"<mrow>{Print(percent.Operand)}<mo form=\"postfix\">%</mo></mrow>",
            BinaryNode binary => Binary(binary),
            CallNode call => Call(call),
            ArrayNode or SpillNode or TableNode or UnsupportedNode => Words(CanonicalText.OfPart(node)),
            MissingNode => "<mrow></mrow>",
            _ => throw new UnreachableException($"It is not known how to typeset {node.GetType().Name}."),
        };

    /// <summary>Print without parentheses that the layout makes needless, as around a whole numerator.</summary>
    private string Bare(FormulaNode node) => Print(WithoutGroup(node));

    private static FormulaNode WithoutGroup(FormulaNode node) => node is GroupNode group ? WithoutGroup(group.Inner) : node;

    private string Reference(ReferenceNode reference)
    {
        var text = CanonicalText.OfPart(reference);
        return operand(text) is { } shown ? Operand(shown) : Name(text);
    }

    private string Prefix(PrefixNode prefix) =>
        prefix.Operator switch
        {
            PrefixOperator.Minus => $"<mrow><mo form=\"prefix\">\u2212</mo>{Print(prefix.Operand)}</mrow>",
            _ => Print(prefix.Operand),
        };

    private string Binary(BinaryNode binary) =>
        binary.Operator switch
        {
            BinaryOperator.Divide => $"<mfrac>{Bare(binary.Left)}{Bare(binary.Right)}</mfrac>",
            BinaryOperator.Power => Power(Base(binary.Left), binary.Right),
            BinaryOperator.Range or BinaryOperator.Intersection or BinaryOperator.Union => Words(CanonicalText.OfPart(binary)),
            _ => $"<mrow>{Print(binary.Left)}<mo>{Sign(binary.Operator)}</mo>{Side(binary.Right)}</mrow>",
        };

    private string Power(string of, FormulaNode exponent) => $"<msup>{of}{Bare(exponent)}</msup>";

    // A sign or a power under an exponent reads wrongly without parentheses, although the formula needs none.
    private string Base(FormulaNode node) =>
        node is PrefixNode or PercentNode or BinaryNode || IsCompound(node) ? Fenced(Print(node)) : Print(node);

    private bool IsCompound(FormulaNode node) =>
        node is NameNode name && operand(name.Name) is { IsQuantity: true } shown && (shown.Unit is not null || IsNegative(shown));

    // A negative number after an operator stands in parentheses, as in 5 − (−3).
    private string Side(FormulaNode node) =>
        node is NameNode name && operand(name.Name) is { IsQuantity: true } shown && IsNegative(shown) ? Fenced(Print(node)) : Print(node);

    private static bool IsNegative(MathMlOperand shown) => shown.Text.StartsWith('-') || shown.Text.StartsWith('\u2212');

    private static string Sign(BinaryOperator op) =>
        op switch
        {
            BinaryOperator.Multiply => "×",
            BinaryOperator.Subtract => "\u2212",
            BinaryOperator.NotEqual => "≠",
            BinaryOperator.LessOrEqual => "≤",
            BinaryOperator.GreaterOrEqual => "≥",
            _ => Escape(CanonicalText.Symbol(op)),
        };

    private static string Number(double value)
    {
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        var exponent = text.IndexOf('E', StringComparison.Ordinal);
        if (exponent < 0)
            return $"<mn>{text}</mn>";
        var power = int.Parse(text.AsSpan(exponent + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var sign = power < 0 ? "<mo form=\"prefix\">\u2212</mo>" : "";
        return $"<mrow><mn>{text[..exponent]}</mn><mo>×</mo><msup><mn>10</mn><mrow>{sign}<mn>{Math.Abs(power)}</mn></mrow></msup></mrow>";
    }

    // Around a single line, stretching only makes parentheses too tall.
    private static string Fenced(string inner, string open = "(", string close = ")")
    {
        var stretchy =
            inner.Contains("<mfrac", StringComparison.Ordinal) || inner.Contains("<mtable", StringComparison.Ordinal) ? "true" : "false";
        return $"<mrow><mo form=\"prefix\" stretchy=\"{stretchy}\">{open}</mo>{inner}<mo form=\"postfix\" stretchy=\"{stretchy}\">{close}</mo></mrow>";
    }

    /// <summary>
    /// What an operator stands between is an identifier: <c>mtext</c> counts as space, and an operator beside it loses its own.
    /// </summary>
    private static string Name(string name) => $"<mi>{Escape(name)}</mi>";

    private static string Words(string words) => $"<mtext>{Escape(words)}</mtext>";

    /// <summary>Escapes what XML reserves; a character that XML cannot hold becomes a space.</summary>
    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '&' => escaped.Append("&amp;"),
                '"' => escaped.Append("&quot;"),
                < 0x20 or 0xFFFE or 0xFFFF => escaped.Append(' '),
                _ => escaped.Append(rune.ToString()),
            };
        }

        return escaped.ToString();
    }
}
