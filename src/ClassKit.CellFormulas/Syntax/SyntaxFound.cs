namespace ClassKit.CellFormulas.Syntax;

/// <summary>What stands where a formula stops making sense.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">As written, its beginning if it is long; empty where nothing is quoted.</param>
public sealed record SyntaxFound(SyntaxFoundKind Kind, string Text = "");
