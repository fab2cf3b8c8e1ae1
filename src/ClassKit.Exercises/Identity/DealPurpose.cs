namespace ClassKit.Exercises.Identity;

/// <summary>
/// What a deal is for. Each purpose draws from streams of its own, so that the same seed never deals a graded set's numbers for practice.
/// </summary>
public enum DealPurpose
{
    /// <summary>Work that is handed in and graded.</summary>
    Graded,

    /// <summary>Practice, with the answers at hand.</summary>
    Practice,

    /// <summary>Practice aimed at what was missed, after grading.</summary>
    FollowUp,

    /// <summary>Work of an invented class, with the numbers of graded work.</summary>
    Rehearsal,
}
