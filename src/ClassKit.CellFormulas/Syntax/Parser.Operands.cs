using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>The rules for operands.</summary>
internal sealed partial class Parser
{
    private FormulaNode Primary(bool unions)
    {
        if (Failed)
            return Unexpected(SyntaxExpected.Operand);
        var operand = Current.Kind switch
        {
            TokenKind.Number => Number(),
            TokenKind.Text => Text(),
            TokenKind.Error => Error(),
            TokenKind.Reference => Reference(null, Current.Span),
            TokenKind.Sheet => OnSheet(),
            TokenKind.Name => Name(null, Current.Span),
            TokenKind.Function => Call(),
            TokenKind.Unsupported => Unsupported(),
            TokenKind.LeftParenthesis => Group(),
            TokenKind.LeftBrace => Array(),
            _ => Unexpected(SyntaxExpected.Operand),
        };
        if (!Failed && Current.Kind == TokenKind.Hash && CanBeReference(operand))
            operand = new SpillNode(operand, TextSpan.Covering(operand.Span, Take().Span));
        return operand;
    }

    private NumberNode Number()
    {
        var token = Take();
        return new(token.Number, token.Span);
    }

    private TextNode Text()
    {
        var token = Take();
        return new(token.Payload!, token.Span);
    }

    private ErrorNode Error()
    {
        var token = Take();
        return new((CellError)(int)token.Number, token.Span);
    }

    private FormulaNode Unsupported()
    {
        var token = Take();
        if (IsApplied)
            return Applied(token.Span, Construct.OtherWorkbooksFunction);
        var text = _text.Substring(token.Span.Start, token.Span.Length);
        var table = token.Construct == Construct.TableReference ? TableReferenceText.Read(text, token.Span) : null;
        return table is not null ? table : new UnsupportedNode(token.Construct, text, token.Span);
    }

    private ReferenceNode Reference(string? sheet, TextSpan from)
    {
        var token = Take();
        return new(sheet, token.First, token.Last, TextSpan.Covering(from, token.Span));
    }

    private FormulaNode OnSheet()
    {
        var sheet = Take();
        switch (Current.Kind)
        {
            case TokenKind.Reference when !Current.SpaceBefore:
                return Reference(sheet.Payload, sheet.Span);
            case TokenKind.Name when !Current.SpaceBefore:
                return Name(sheet.Payload, sheet.Span);
            case TokenKind.Error when !Current.SpaceBefore && (CellError)(int)Current.Number == CellError.Reference:
                return new ErrorNode(CellError.Reference, TextSpan.Covering(sheet.Span, Take().Span));
            case TokenKind.Function when !Current.SpaceBefore:
                var macro = Call();
                var span = TextSpan.Covering(sheet.Span, macro.Span);
                return new UnsupportedNode(Construct.Macro, _text.Substring(span.Start, span.Length), span);
            default:
                return Unexpected(SyntaxExpected.CellOrNameOnSheet);
        }
    }

    private FormulaNode Name(string? sheet, TextSpan from)
    {
        var token = Take();
        var span = TextSpan.Covering(from, token.Span);
        if (sheet is null && token.Payload!.Equals("TRUE", StringComparison.OrdinalIgnoreCase))
            return new LogicalNode(true, span);
        if (sheet is null && token.Payload!.Equals("FALSE", StringComparison.OrdinalIgnoreCase))
            return new LogicalNode(false, span);
        return new NameNode(sheet, FilePrefixes.StripName(token.Payload!), span);
    }

    private GroupNode Group()
    {
        var open = Take();
        var inner = Expression(unions: true);
        var close = Expect(TokenKind.RightParenthesis, SyntaxExpected.OperatorOrClose);
        return new(inner, TextSpan.Covering(open.Span, close));
    }

    private FormulaNode Call()
    {
        var name = Take();
        _at++; // the parenthesis, which made the word a function
        var arguments = new List<FormulaNode>();
        if (Current.Kind != TokenKind.RightParenthesis || Failed)
        {
            arguments.Add(Argument());
            while (!Failed && Current.Kind == TokenKind.Comma)
            {
                _at++;
                arguments.Add(Argument());
            }
        }

        var close = Expect(TokenKind.RightParenthesis, SyntaxExpected.OperatorCommaOrClose);
        return Called(name.Payload!, arguments, TextSpan.Covering(name.Span, close));
    }

    private FormulaNode Argument() =>
        Current.Kind is TokenKind.Comma or TokenKind.RightParenthesis
            ? new MissingNode(new(Current.Span.Start, 0))
            : Expression(unions: false);

    /// <summary>Undoes the spellings that files use for operators, and sets aside the functions that are no functions.</summary>
    private FormulaNode Called(string written, List<FormulaNode> arguments, TextSpan span)
    {
        var name = FilePrefixes.Strip(written).ToUpperInvariant();
        if (IsApplied)
            return Applied(span, Construct.Lambda);
        return (name, arguments.Count) switch
        {
            ("SINGLE", 1) => new PrefixNode(PrefixOperator.Intersect, arguments[0], span),
            ("ANCHORARRAY", 1) => new SpillNode(arguments[0], span),
            ("LAMBDA", _) => new UnsupportedNode(Construct.Lambda, _text.Substring(span.Start, span.Length), span),
            _ => new CallNode(name, arguments, span),
        };
    }

    private bool IsApplied => !Failed && Current is { Kind: TokenKind.LeftParenthesis, SpaceBefore: false };

    /// <summary><c>LAMBDA(x, x+1)(2)</c> or <c>[1]!macro(2)</c>, applied as often as there are parentheses.</summary>
    private FormulaNode Applied(TextSpan span, Construct construct)
    {
        var times = 0;
        while (IsApplied)
        {
            if (++times > SyntaxLimits.Nesting)
                return TooDeep();
            span = TextSpan.Covering(span, Arguments());
        }

        return new UnsupportedNode(construct, _text.Substring(span.Start, span.Length), span);
    }

    /// <summary>Takes arguments that nobody will evaluate; returns where they end.</summary>
    private TextSpan Arguments()
    {
        if (++_nesting > SyntaxLimits.Nesting)
            return TooDeep().Span;
        _at++;
        while (!Failed && Current.Kind != TokenKind.RightParenthesis)
        {
            Argument();
            if (Current.Kind != TokenKind.Comma)
                break;
            _at++;
        }

        var close = Expect(TokenKind.RightParenthesis, SyntaxExpected.OperatorCommaOrClose);
        _nesting--;
        return close;
    }

    private FormulaNode Array()
    {
        var open = Take();
        var elements = new List<CellValue>();
        var columns = 0;
        var column = 0;
        while (!Failed)
        {
            elements.Add(Element());
            column++;
            if (Failed)
                break;
            var separator = Current;
            if (separator.Kind == TokenKind.Comma)
            {
                _at++;
                continue;
            }

            if (columns == 0)
                columns = column;
            if (column != columns)
            {
                Unexpected(column < columns ? SyntaxExpected.AsManyElements : SyntaxExpected.ShorterRow);
                break;
            }

            column = 0;
            if (separator.Kind == TokenKind.Semicolon)
            {
                _at++;
                continue;
            }

            var close = Expect(TokenKind.RightBrace, SyntaxExpected.SeparatorOrArrayEnd);
            return new ArrayNode(columns, elements, TextSpan.Covering(open.Span, close));
        }

        return Unexpected(SyntaxExpected.ArrayEnd);
    }

    private CellValue Element()
    {
        var sign = 0;
        if (Current.Kind is TokenKind.Minus or TokenKind.Plus)
            sign = Take().Kind == TokenKind.Minus ? -1 : 1;
        switch (Current.Kind)
        {
            case TokenKind.Number:
                var number = Take().Number;
                return CellValue.FromNumber(sign < 0 ? -number : number);
            case TokenKind.Text when sign == 0:
                return CellValue.FromText(Take().Payload!);
            case TokenKind.Error when sign == 0:
                return CellValue.FromError((CellError)(int)Take().Number);
            case TokenKind.Name when sign == 0 && bool.TryParse(Current.Payload, out var logical):
                _at++;
                return CellValue.FromLogical(logical);
            default:
                Unexpected(SyntaxExpected.Element);
                return default;
        }
    }

    private TextSpan Expect(TokenKind kind, SyntaxExpected expected)
    {
        if (!Failed && Current.Kind == kind)
            return Take().Span;
        return Unexpected(expected).Span;
    }
}
