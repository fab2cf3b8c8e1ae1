namespace ClassKit.Grading.Findings;

/// <summary>Why a formula cannot use a cell.</summary>
public enum UnusableCellKind
{
    /// <summary>Words stand in it.</summary>
    Words,

    /// <summary>Nothing stands in it.</summary>
    Empty,

    /// <summary>It is the formula's own.</summary>
    Itself,

    /// <summary>It is worked out from the formula's own cell.</summary>
    InTurn,
}
