namespace ClassKit.CellFormulas.Calls;

/// <summary>How far an evaluation got.</summary>
public enum EvaluationStatus
{
    /// <summary>A value was computed; it may be an error value, which is a value like any other.</summary>
    Computed,

    /// <summary>
    /// The formula, or one it depends on, uses something that we do not evaluate. Nothing is said about whether it is right.
    /// </summary>
    Unsupported,

    /// <summary>The formula depends on the clock or on chance (NOW, RAND), so no value can be compared.</summary>
    Volatile,
}
