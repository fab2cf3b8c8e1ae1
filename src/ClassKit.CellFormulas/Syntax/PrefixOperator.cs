namespace ClassKit.CellFormulas.Syntax;

/// <summary>An operator before its operand.</summary>
public enum PrefixOperator
{
    /// <summary><c>+</c>, which changes nothing.</summary>
    Plus,

    /// <summary><c>-</c>; binds tighter than <c>^</c>, so <c>-2^2</c> is 4.</summary>
    Minus,

    /// <summary><c>@</c>, stored as <c>_xlfn.SINGLE</c>: the one cell of a range that lies in this row or column.</summary>
    Intersect,
}
