namespace ClassKit.UseCases.Inspecting;

/// <summary>How a cell's stored value compares with the recomputed one.</summary>
public enum InspectionResult
{
    /// <summary>The same; numbers to 1e-9 relative.</summary>
    Agree,

    /// <summary>Not the same.</summary>
    Differ,

    /// <summary>A formula that we cannot evaluate.</summary>
    Unsupported,

    /// <summary>No program has computed the formula yet.</summary>
    NoStoredValue,

    /// <summary>The value depends on the clock or on chance.</summary>
    Volatile,
}
