namespace ClassKit.Exercises.SelfChecking;

/// <summary>What a typed number can turn out to be, the kindest first.</summary>
public enum MeaningKind
{
    /// <summary>The answer.</summary>
    Right,

    /// <summary>The right method on an earlier answer that a misconception made wrong.</summary>
    CarriedOn,

    /// <summary>A known wrong method.</summary>
    Misconception,
}
