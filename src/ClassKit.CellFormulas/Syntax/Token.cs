namespace ClassKit.CellFormulas.Syntax;

/// <summary>One token of a formula.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Span">Where it stands.</param>
/// <param name="SpaceBefore">True if white space precedes it, which between two references is an operator.</param>
/// <param name="Payload">What was read: a text, a name, a sheet, the words for an unsupported construct or for a bad token.</param>
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
    Corner? Last = null);
