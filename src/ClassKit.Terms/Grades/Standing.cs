namespace ClassKit.Terms.Grades;

/// <summary>How a piece of work stands in a student's grade.</summary>
public enum Standing
{
    /// <summary>It counts.</summary>
    Counts,

    /// <summary>It is one of the lowest, which the rule drops.</summary>
    Dropped,

    /// <summary>The student is excused; its weight goes to the others.</summary>
    Excused,

    /// <summary>The student was absent, and the rule leaves that out.</summary>
    LeftOut,

    /// <summary>It is not due yet.</summary>
    NotDue,

    /// <summary>There is no mark.</summary>
    Missing,
}
