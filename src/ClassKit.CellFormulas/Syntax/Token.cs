namespace ClassKit.CellFormulas.Syntax;

/// <summary>One token of a formula.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Span">Where it stands.</param>
/// <param name="SpaceBefore">True if white space precedes it, which between two references is an operator.</param>
/// <param name="Payload">What was read: a text, a name or a sheet.</param>
/// <param name="Number">The value of a number; the error of an error token.</param>
/// <param name="First">The first corner of a reference.</param>
/// <param name="Last">The last corner of a reference to whole rows or columns.</param>
internal readonly record struct Token(
    TokenKind Kind,
    TextSpan Span,
    bool SpaceBefore,
    string? Payload = null,
    double Number = 0,
    Corner First = default,
    Corner? Last = null
)
{
    /// <summary>What is not evaluated, of a token that is not.</summary>
    public Construct Construct { get; init; }

    /// <summary>What it is instead, of a token that is none.</summary>
    public SyntaxFoundKind Bad { get; init; }
}
