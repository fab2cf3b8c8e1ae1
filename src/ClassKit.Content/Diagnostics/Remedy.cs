namespace ClassKit.Content.Diagnostics;

/// <summary>
/// What can be done about something and is asked for differently at every front: a command and its options in a terminal, a button
/// elsewhere.
/// </summary>
/// <remarks>Messages stand without it; a front adds the way there in its own words.</remarks>
public enum Remedy
{
    /// <summary>Name a folder that dealing made.</summary>
    NameDealtFolder,

    /// <summary>Name a folder that grading made.</summary>
    NameGradedFolder,

    /// <summary>Name a folder to write to.</summary>
    NameOutputFolder,

    /// <summary>Name the class profile.</summary>
    NameClassProfile,

    /// <summary>Let points typed into the gradebook count as corrections.</summary>
    TakeOverPoints,

    /// <summary>Grade again under another marking scheme.</summary>
    RegradeUnderOtherMarking,

    /// <summary>Check content, which names the line at fault.</summary>
    CheckContent,

    /// <summary>Look at how the draws of exercises fare.</summary>
    ShowDraws,

    /// <summary>Make practice that follows from no grades.</summary>
    MakePractice,

    /// <summary>Name the moment at which work was due.</summary>
    NameDueMoment,

    /// <summary>Name other days for handing out and handing in.</summary>
    NameOtherDays,

    /// <summary>Let those who were graded and have nothing among what is graded now be without a grade.</summary>
    DropGraded,
}
