namespace ClassKit.CellFormulas.Values;

/// <summary>What kind of value a single cell holds.</summary>
public enum CellValueKind
{
    /// <summary>Nothing: neither 0 nor the empty text, though it acts as either where one is wanted.</summary>
    Blank,

    /// <summary>A double.</summary>
    Number,

    /// <summary>A text.</summary>
    Text,

    /// <summary>TRUE or FALSE.</summary>
    Logical,

    /// <summary>An error value such as <c>#DIV/0!</c>.</summary>
    Error,
}
