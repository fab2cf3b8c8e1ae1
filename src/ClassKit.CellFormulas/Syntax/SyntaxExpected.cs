namespace ClassKit.CellFormulas.Syntax;

/// <summary>What could stand where a formula stops making sense.</summary>
public enum SyntaxExpected
{
    /// <summary>A number, a text, a cell, a name, a function or an opening parenthesis.</summary>
    Operand,

    /// <summary>An operator.</summary>
    Operator,

    /// <summary>An operator or the end.</summary>
    OperatorOrEnd,

    /// <summary>An operator or a closing parenthesis.</summary>
    OperatorOrClose,

    /// <summary>An operator, a comma or a closing parenthesis.</summary>
    OperatorCommaOrClose,

    /// <summary>A cell or a name right after the sheet.</summary>
    CellOrNameOnSheet,

    /// <summary>As many elements in each row of an array.</summary>
    AsManyElements,

    /// <summary>A row of an array no longer than the first.</summary>
    ShorterRow,

    /// <summary>A comma, a semicolon or the end of an array.</summary>
    SeparatorOrArrayEnd,

    /// <summary>The end of an array.</summary>
    ArrayEnd,

    /// <summary>A number, a text, a logical or an error value: arrays hold no formulas.</summary>
    Element,

    /// <summary>A formula of at most <see cref="Syntax.SyntaxLimits.Length"/> characters.</summary>
    ShorterFormula,

    /// <summary>
    /// At most <see cref="Syntax.SyntaxLimits.Nesting"/> levels, and <see cref="Syntax.SyntaxLimits.TreeDepth"/> operators in a row.
    /// </summary>
    FewerLevels,
}
