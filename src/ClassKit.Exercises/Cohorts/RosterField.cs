namespace ClassKit.Exercises.Cohorts;

/// <summary>What is wanted of a roster's columns.</summary>
public enum RosterField
{
    /// <summary>The student's id.</summary>
    Id,

    /// <summary>The whole name.</summary>
    Name,

    /// <summary>The first or given name.</summary>
    FirstName,

    /// <summary>The last or family name.</summary>
    LastName,

    /// <summary>The e-mail address.</summary>
    Email,

    /// <summary>The team that the student works in at the bench.</summary>
    Team,

    /// <summary>That the student reads large print.</summary>
    LargePrint,

    /// <summary>How much more time the student has.</summary>
    ExtraTime,

    /// <summary>When this student's work is due.</summary>
    Due,

    /// <summary>Which exercises are not the student's.</summary>
    LeavesOut,

    /// <summary>Which work the student need not do.</summary>
    ExcusedFrom,

    /// <summary>What the student was called on earlier lists.</summary>
    Formerly,
}
