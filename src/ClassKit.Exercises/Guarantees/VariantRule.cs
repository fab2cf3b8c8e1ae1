namespace ClassKit.Exercises.Guarantees;

/// <summary>Something that is true of every variant that a student is dealt.</summary>
public abstract class VariantRule
{
    /// <summary>A few words to call it by.</summary>
    public abstract string Name { get; }

    /// <summary>How a draw breaks the rule; null if it keeps it.</summary>
    internal abstract Breach? Check(Candidate candidate);
}
