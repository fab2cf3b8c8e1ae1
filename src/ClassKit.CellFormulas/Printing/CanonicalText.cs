using System.Diagnostics;
using System.Globalization;
using System.Text;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Printing;

/// <summary>Prints a syntax tree the one way that does not depend on how it was typed; parsing the result gives the same tree.</summary>
internal sealed class CanonicalText
{
    private readonly StringBuilder _text = new();
    private readonly bool _forFile;

    private CanonicalText(bool forFile) => _forFile = forFile;

    /// <summary>As people read it, with the leading <c>=</c>.</summary>
    public static string Of(FormulaNode root)
    {
        var printer = new CanonicalText(forFile: false);
        printer._text.Append('=');
        printer.Print(root);
        return printer._text.ToString();
    }

    /// <summary>As a file stores it: no <c>=</c>, newer words with their prefixes.</summary>
    public static string ForFile(FormulaNode root)
    {
        var printer = new CanonicalText(forFile: true);
        printer.Print(root);
        return printer._text.ToString();
    }

    /// <summary>One operand, such as <c>B5</c> or <c>'Sheet one'!B5:B9</c>.</summary>
    public static string OfPart(FormulaNode node)
    {
        var printer = new CanonicalText(forFile: false);
        printer.Print(node);
        return printer._text.ToString();
    }

    public static string Symbol(BinaryOperator op) =>
        op switch
        {
            BinaryOperator.Range => ":",
            BinaryOperator.Intersection => " ",
            BinaryOperator.Union => ",",
            BinaryOperator.Power => "^",
            BinaryOperator.Multiply => "*",
            BinaryOperator.Divide => "/",
            BinaryOperator.Add => "+",
            BinaryOperator.Subtract => "-",
            BinaryOperator.Concatenate => "&",
            BinaryOperator.Equal => "=",
            BinaryOperator.NotEqual => "<>",
            BinaryOperator.Less => "<",
            BinaryOperator.LessOrEqual => "<=",
            BinaryOperator.Greater => ">",
            BinaryOperator.GreaterOrEqual => ">=",
        };

    private void Print(FormulaNode node)
    {
        switch (node)
        {
            case NumberNode number:
                _text.Append(number.Value.ToString("R", CultureInfo.InvariantCulture));
                break;
            case TextNode text:
                Quote(text.Value);
                break;
            case LogicalNode logical:
                _text.Append(logical.Value ? "TRUE" : "FALSE");
                break;
            case ErrorNode error:
                _text.Append(CellErrorText.Of(error.Error));
                break;
            case ArrayNode array:
                Print(array);
                break;
            case ReferenceNode reference:
                Print(reference);
                break;
            case NameNode name:
                PrintSheet(name.Sheet);
                _text.Append(name.Name);
                break;
            case PrefixNode prefix:
                Print(prefix);
                break;
            case PercentNode percent:
                Print(percent.Operand);
                _text.Append('%');
                break;
            case SpillNode spill:
                Print(spill);
                break;
            case BinaryNode binary:
                Print(binary);
                break;
            case GroupNode group:
                Print(group);
                break;
            case CallNode call:
                Print(call);
                break;
            case TableNode table:
                _text.Append(table.Text);
                break;
            case UnsupportedNode unsupported:
                _text.Append(unsupported.Text);
                break;
            case MissingNode:
                break;
            default:
                throw new UnreachableException($"It is not known how to write {node.GetType().Name}.");
        }
    }

    private void Print(BinaryNode binary)
    {
        Print(binary.Left, binary.Operator);
        _text.Append(Symbol(binary.Operator));
        Print(binary.Right, binary.Operator);
    }

    private void Print(GroupNode group)
    {
        _text.Append('(');
        Print(group.Inner);
        _text.Append(')');
    }

    /// <summary>Beside a colon, a name of up to three letters would read as a column.</summary>
    private void Print(FormulaNode operand, BinaryOperator op)
    {
        const int LongestColumn = 3;
        var looksLikeColumn =
            op == BinaryOperator.Range && operand is NameNode { Name.Length: <= LongestColumn } name && name.Name.All(char.IsAsciiLetter);
        if (looksLikeColumn)
            _text.Append('(');
        Print(operand);
        if (looksLikeColumn)
            _text.Append(')');
    }

    private void Print(PrefixNode prefix)
    {
        if (prefix.Operator == PrefixOperator.Intersect && _forFile)
        {
            _text.Append(FilePrefixes.Function).Append("SINGLE(");
            PrintOperand(prefix);
            _text.Append(')');
            return;
        }

        _text.Append(
            prefix.Operator switch
            {
                PrefixOperator.Plus => '+',
                PrefixOperator.Minus => '-',
                PrefixOperator.Intersect => '@',
            }
        );
        PrintOperand(prefix);
    }

    /// <summary>A union reads as arguments where it stands in a function, as <c>@</c> does in files.</summary>
    private void PrintOperand(PrefixNode prefix)
    {
        var isUnion = prefix.Operator == PrefixOperator.Intersect && HasBareUnion(prefix.Operand);
        if (isUnion)
            _text.Append('(');
        Print(prefix.Operand);
        if (isUnion)
            _text.Append(')');
    }

    private static bool HasBareUnion(FormulaNode node) =>
        node switch
        {
            BinaryNode binary => binary.Operator == BinaryOperator.Union || HasBareUnion(binary.Left) || HasBareUnion(binary.Right),
            PrefixNode prefix => HasBareUnion(prefix.Operand),
            PercentNode percent => HasBareUnion(percent.Operand),
            _ => false,
        };

    private void Print(SpillNode spill)
    {
        if (_forFile)
            _text.Append(FilePrefixes.Function).Append("ANCHORARRAY(");
        Print(spill.Operand);
        _text.Append(_forFile ? ')' : '#');
    }

    private void Print(CallNode call)
    {
        if (_forFile && NewerFunctions.Contains(call.Name))
            _text.Append(NewerFunctions.Prefix(call.Name));
        _text.Append(call.Name).Append('(');
        for (var at = 0; at < call.Arguments.Count; at++)
        {
            if (at > 0)
                _text.Append(',');
            Print(call.Arguments[at]);
        }

        _text.Append(')');
    }

    private void Print(ArrayNode array)
    {
        _text.Append('{');
        for (var at = 0; at < array.Elements.Count; at++)
        {
            if (at > 0)
                _text.Append(at % array.Columns == 0 ? ';' : ',');
            var element = array.Elements[at];
            if (element.IsText)
                Quote(element.Text);
            else
                _text.Append(element.ToString());
        }

        _text.Append('}');
    }

    private void Print(ReferenceNode reference)
    {
        PrintSheet(reference.Sheet);
        _text.Append(reference.First.ToString());
        if (reference.Last is { } last)
            _text.Append(':').Append(last.ToString());
    }

    private void PrintSheet(string? sheet)
    {
        if (sheet is null)
            return;
        if (SheetNames.NeedsQuotes(sheet))
            _text.Append('\'').Append(sheet.Replace("'", "''", StringComparison.Ordinal)).Append('\'');
        else
            _text.Append(sheet);
        _text.Append('!');
    }

    private void Quote(string text) => _text.Append('"').Append(text.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
}
