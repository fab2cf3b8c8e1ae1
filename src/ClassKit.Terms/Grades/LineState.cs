namespace ClassKit.Terms.Grades;

/// <summary>Whether what must be passed was passed.</summary>
public enum LineState
{
    /// <summary>It was.</summary>
    Passed,

    /// <summary>It was not.</summary>
    Missed,

    /// <summary>Nothing was marked that could say so; it holds nothing back, and no grade is final with it.</summary>
    Open,
}
