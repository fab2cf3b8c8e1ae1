namespace ClassKit.Notes;

/// <summary>The works of the tour, in their order.</summary>
public enum TourStep
{
    /// <summary>A lesson's pack.</summary>
    Pack,

    /// <summary>Practice for anyone.</summary>
    Practice,

    /// <summary>The first set, dealt.</summary>
    Deal,

    /// <summary>What came back of it.</summary>
    Grading,

    /// <summary>What came back of the second set, in part on paper.</summary>
    SecondSet,

    /// <summary>The second set for those who sit it again.</summary>
    Resit,

    /// <summary>What the teams measured.</summary>
    Measurements,

    /// <summary>The grades of the term.</summary>
    Term,
}
