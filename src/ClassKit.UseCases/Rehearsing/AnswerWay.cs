namespace ClassKit.UseCases.Rehearsing;

/// <summary>How an invented student answers one part.</summary>
public enum AnswerWay
{
    /// <summary>The right formula over the sheet's cells, earlier answers among them.</summary>
    Cells,

    /// <summary>The right formula over the givens alone, earlier parts worked out again inside it.</summary>
    OneGo,

    /// <summary>The right number, typed.</summary>
    Typed,

    /// <summary>The right number as text with its unit behind it.</summary>
    TypedWithUnit,

    /// <summary>The right number as text with a decimal comma.</summary>
    TypedWithComma,

    /// <summary>The right formula with one given typed as a number.</summary>
    PartlyTyped,

    /// <summary>The right number within a formula that only looks like one.</summary>
    HardCoded,

    /// <summary>The right formula with a blank before it, so that it stays a text.</summary>
    LeftAsText,

    /// <summary>A number that fills the cell and that many methods, or none, would give: 0 or 1.</summary>
    Filler,

    /// <summary>A known wrong method as a formula.</summary>
    WrongTurn,

    /// <summary>What a known wrong method gives, typed.</summary>
    WrongTurnTyped,

    /// <summary>A wrong method that the exercise does not list, as a formula.</summary>
    UnlistedTurn,

    /// <summary>A wrong number, typed.</summary>
    Slip,

    /// <summary>Nothing.</summary>
    Blank,

    /// <summary>A formula that divides by zero.</summary>
    DivisionByZero,

    /// <summary>Words instead of a number.</summary>
    Words,
}
