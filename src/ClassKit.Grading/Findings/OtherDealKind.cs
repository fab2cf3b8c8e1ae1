namespace ClassKit.Grading.Findings;

/// <summary>What a workbook is that is not from the deal at hand.</summary>
public enum OtherDealKind
{
    /// <summary>Another deal of the same lesson to the same class.</summary>
    OfTheClass,

    /// <summary>Follow-up practice.</summary>
    FollowUp,

    /// <summary>Practice of another kind.</summary>
    Practice,

    /// <summary>Of an invented class.</summary>
    Rehearsal,

    /// <summary>Work that is graded, where the deal at hand is for something else.</summary>
    GradedWork,

    /// <summary>Of another lesson.</summary>
    Lesson,

    /// <summary>Dealt to another class.</summary>
    Class,

    /// <summary>It carries no code, and its numbers were not dealt here: older than codes, or not a workbook of ours.</summary>
    Unmarked,
}
