namespace ClassKit.Terms.Rules;

/// <summary>What an absence that nothing excuses comes to.</summary>
public enum AbsenceRule
{
    /// <summary>It counts as no points.</summary>
    Zero,

    /// <summary>It is left out, as excused work is.</summary>
    LeftOut,
}
