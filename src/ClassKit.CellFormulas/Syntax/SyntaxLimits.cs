namespace ClassKit.CellFormulas.Syntax;

/// <summary>
/// How large a formula may be. Spreadsheet programs allow 8192 characters and 64 levels of functions; we are no stricter.
/// </summary>
public static class SyntaxLimits
{
    /// <summary>Characters, the leading <c>=</c> counted.</summary>
    public const int Length = 16_384;

    /// <summary>Parentheses, functions and prefix operators inside one another.</summary>
    public const int Nesting = 200;

    /// <summary>Levels of the syntax tree: a chain of additions is as deep as it is long.</summary>
    public const int TreeDepth = 2_000;
}
