namespace ClassKit.Terms.Outlooks;

/// <summary>Whether a grade can still be had.</summary>
public enum OutlookState
{
    /// <summary>Whatever is still to come, the grade will be at least this.</summary>
    Sure,

    /// <summary>It takes something.</summary>
    Needs,

    /// <summary>Full marks in all that is to come do not reach it.</summary>
    OutOfReach,
}
