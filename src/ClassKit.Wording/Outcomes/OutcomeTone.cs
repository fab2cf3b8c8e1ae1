namespace ClassKit.Wording.Outcomes;

/// <summary>
/// The colours of outcomes, the same on pages and in workbooks. No meaning is told by colour alone: a word always stands beside it.
/// </summary>
public enum OutcomeTone
{
    /// <summary>Understood.</summary>
    Good,

    /// <summary>Right in part, or carried on rightly.</summary>
    Info,

    /// <summary>Wrong in a way that is known and can be taught.</summary>
    Warn,

    /// <summary>Wrong.</summary>
    Bad,

    /// <summary>Nothing is there.</summary>
    Shade,

    /// <summary>Somebody has to look.</summary>
    Accent,
}
