using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>
/// Builds the syntax tree, one method for each rule of the grammar, from the operators that bind loosest to the operands.
/// After the first error every rule returns at once.
/// </summary>
/// <remarks>
/// Precedence: ECMA-376 Part 1, 18.17.2.2: <c>:</c>, intersection, union, prefix, percent, <c>^</c>, <c>* /</c>, <c>+ -</c>, <c>&amp;</c>,
/// comparisons; all binary operators group to the left. A comma is a union only where it cannot separate arguments: inside parentheses of
/// its own, or outside everything.
/// </remarks>
internal sealed partial class Parser
{
    private readonly string _text;
    private readonly List<Token> _tokens;
    private int _at;
    private int _nesting;
    private SyntaxError? _error;

    private Parser(string text)
    {
        _text = text;
        _tokens = Lexer.Tokens(text, 1);
    }

    /// <summary>Parses a text that starts with <c>=</c>.</summary>
    public static (FormulaNode? Root, SyntaxError? Error) Parse(string text)
    {
        if (text.Length > SyntaxLimits.Length)
            return (
                null,
                new(text[..SyntaxLimits.Length], SyntaxLimits.Length, 0, new(SyntaxFoundKind.MoreText), SyntaxExpected.ShorterFormula)
            );
        var parser = new Parser(text);
        var root = parser.Expression(unions: true);
        if (parser._error is null && parser.Current.Kind != TokenKind.End)
            parser.Unexpected(SyntaxExpected.OperatorOrEnd);
        return parser._error is null ? (root, null) : (null, parser._error);
    }

    private Token Current => _tokens[Math.Min(_at, _tokens.Count - 1)];

    private bool Failed => _error is not null;

    private Token Take() => _tokens[_at++];

    private FormulaNode Expression(bool unions)
    {
        if (++_nesting > SyntaxLimits.Nesting)
            TooDeep();
        var node = Comparison(unions);
        _nesting--;
        return node;
    }

    private FormulaNode Comparison(bool unions)
    {
        var left = Concatenation(unions);
        var chain = 0;
        while (!Failed && ComparisonOperator(Current.Kind) is { } op)
            left = Combine(op, left, Concatenation, unions, ref chain);
        return left;
    }

    private FormulaNode Concatenation(bool unions)
    {
        var left = Sum(unions);
        var chain = 0;
        while (!Failed && Current.Kind == TokenKind.Ampersand)
            left = Combine(BinaryOperator.Concatenate, left, Sum, unions, ref chain);
        return left;
    }

    private FormulaNode Sum(bool unions)
    {
        var left = Product(unions);
        var chain = 0;
        while (!Failed && Current.Kind is TokenKind.Plus or TokenKind.Minus)
            left = Combine(Current.Kind == TokenKind.Plus ? BinaryOperator.Add : BinaryOperator.Subtract, left, Product, unions, ref chain);
        return left;
    }

    private FormulaNode Product(bool unions)
    {
        var left = Power(unions);
        var chain = 0;
        while (!Failed && Current.Kind is TokenKind.Star or TokenKind.Slash)
            left = Combine(
                Current.Kind == TokenKind.Star ? BinaryOperator.Multiply : BinaryOperator.Divide,
                left,
                Power,
                unions,
                ref chain
            );
        return left;
    }

    private FormulaNode Power(bool unions)
    {
        var left = Percent(unions);
        var chain = 0;
        while (!Failed && Current.Kind == TokenKind.Caret)
            left = Combine(BinaryOperator.Power, left, Percent, unions, ref chain);
        return left;
    }

    private FormulaNode Percent(bool unions)
    {
        var operand = Prefix(unions);
        var chain = 0;
        while (!Failed && Current.Kind == TokenKind.Percent)
        {
            if (++chain > SyntaxLimits.Nesting)
                TooDeep();
            operand = new PercentNode(operand, TextSpan.Covering(operand.Span, Take().Span));
        }

        return operand;
    }

    private FormulaNode Prefix(bool unions)
    {
        if (Current.Kind is not (TokenKind.Plus or TokenKind.Minus or TokenKind.At))
            return Union(unions);
        if (++_nesting > SyntaxLimits.Nesting)
            return TooDeep();
        var sign = Take();
        var operand = Prefix(unions);
        _nesting--;
        var op = sign.Kind switch
        {
            TokenKind.Plus => PrefixOperator.Plus,
            TokenKind.Minus => PrefixOperator.Minus,
            _ => PrefixOperator.Intersect,
        };
        return new PrefixNode(op, operand, TextSpan.Covering(sign.Span, operand.Span));
    }

    private FormulaNode Union(bool unions)
    {
        var left = Intersection(unions);
        var chain = 0;
        while (unions && !Failed && Current.Kind == TokenKind.Comma)
            left = Combine(BinaryOperator.Union, left, Intersection, unions, ref chain);
        return left;
    }

    private FormulaNode Intersection(bool unions)
    {
        var left = Range(unions);
        var chain = 0;
        while (!Failed && Current.SpaceBefore && CanBeReference(left) && StartsReference(Current.Kind))
        {
            if (++chain > SyntaxLimits.TreeDepth)
                return TooDeep();
            var right = Range(unions);
            left = new BinaryNode(BinaryOperator.Intersection, left, right, TextSpan.Covering(left.Span, right.Span));
        }

        return left;
    }

    private FormulaNode Range(bool unions)
    {
        var left = Primary(unions);
        var chain = 0;
        while (!Failed && Current.Kind == TokenKind.Colon)
        {
            if (CanBeReference(left))
            {
                left = Combine(BinaryOperator.Range, left, Primary, unions, ref chain) is BinaryNode range ? Rectangle(range) : left;
            }
            else
            {
                Unexpected(SyntaxExpected.Operator);
            }
        }

        return left;
    }

    /// <summary>Two plain cells with a colon between them are one reference.</summary>
    private static FormulaNode Rectangle(BinaryNode range) =>
        range is { Left: ReferenceNode { Last: null } first, Right: ReferenceNode { Sheet: null, Last: null } last }
            ? new ReferenceNode(first.Sheet, first.First, last.First, range.Span)
            : range;

    private BinaryNode Combine(BinaryOperator op, FormulaNode left, Func<bool, FormulaNode> next, bool unions, ref int chain)
    {
        if (++chain > SyntaxLimits.TreeDepth)
            TooDeep();
        _at++;
        var right = next(unions);
        return new(op, left, right, TextSpan.Covering(left.Span, right.Span));
    }

    private static BinaryOperator? ComparisonOperator(TokenKind kind) =>
        kind switch
        {
            TokenKind.Equal => BinaryOperator.Equal,
            TokenKind.NotEqual => BinaryOperator.NotEqual,
            TokenKind.Less => BinaryOperator.Less,
            TokenKind.LessOrEqual => BinaryOperator.LessOrEqual,
            TokenKind.Greater => BinaryOperator.Greater,
            TokenKind.GreaterOrEqual => BinaryOperator.GreaterOrEqual,
            _ => null,
        };

    private static bool CanBeReference(FormulaNode node) =>
        node switch
        {
            ReferenceNode
            or NameNode
            or TableNode
            or CallNode
            or SpillNode
            or UnsupportedNode
            or ErrorNode { Error: CellError.Reference } => true,
            BinaryNode binary => binary.Operator is BinaryOperator.Range or BinaryOperator.Intersection or BinaryOperator.Union,
            GroupNode group => CanBeReference(group.Inner),
            _ => false,
        };

    private static bool StartsReference(TokenKind kind) =>
        kind
            is TokenKind.Reference
                or TokenKind.Name
                or TokenKind.Function
                or TokenKind.Sheet
                or TokenKind.Unsupported
                or TokenKind.LeftParenthesis;

    private MissingNode Unexpected(SyntaxExpected expected)
    {
        if (!Failed)
        {
            var token = Current;
            _error = new(_text, token.Span.Start, token.Span.Length, Describe(token), expected);
        }

        return new(new(Current.Span.Start, 0));
    }

    private MissingNode TooDeep()
    {
        _error ??= new(_text, Current.Span.Start, 0, new(SyntaxFoundKind.OneMoreLevel), SyntaxExpected.FewerLevels);
        return new(new(Current.Span.Start, 0));
    }

    private SyntaxFound Describe(Token token)
    {
        var text = _text.Substring(token.Span.Start, Math.Min(token.Span.Length, 40));
        return token.Kind switch
        {
            TokenKind.End => new(SyntaxFoundKind.End),
            TokenKind.Bad => new(token.Bad, text),
            TokenKind.Number => new(SyntaxFoundKind.Number, text),
            TokenKind.Text => new(SyntaxFoundKind.Text, text),
            TokenKind.Reference => new(SyntaxFoundKind.Reference, text),
            TokenKind.Name => new(SyntaxFoundKind.Name, text),
            TokenKind.Function => new(SyntaxFoundKind.Function, text),
            TokenKind.Sheet => new(SyntaxFoundKind.Sheet, text),
            TokenKind.Semicolon => new(SyntaxFoundKind.Semicolon),
            _ => new(SyntaxFoundKind.Sign, text),
        };
    }
}
