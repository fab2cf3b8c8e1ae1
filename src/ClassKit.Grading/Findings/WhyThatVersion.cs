namespace ClassKit.Grading.Findings;

/// <summary>Why one of several versions of a student's work was graded.</summary>
public abstract record WhyThatVersion
{
    private WhyThatVersion() { }

    /// <summary>It says when it was changed, and the other does not; or neither does.</summary>
    public sealed record SaysWhen : WhyThatVersion;

    /// <summary>It was changed last.</summary>
    /// <param name="Changed">When.</param>
    /// <param name="Other">When the other was.</param>
    public sealed record Newer(DateTime Changed, DateTime Other) : WhyThatVersion;

    /// <summary>It earns as much.</summary>
    public sealed record EarnsAsMuch : WhyThatVersion;

    /// <summary>It earns most.</summary>
    public sealed record EarnsMost : WhyThatVersion;
}
