using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.Findings;

/// <summary>Why one of several versions of a student's work was graded.</summary>
public abstract record WhyThatVersion
{
    private WhyThatVersion() { }

    internal virtual WhyThatVersion Under(IDisguise disguise) => this;

    /// <summary>
    /// It says when it was changed, and the other does not; or neither does. Only in grades of before what does not say it was compared by
    /// points.
    /// </summary>
    public sealed record SaysWhen : WhyThatVersion;

    /// <summary>Nothing was answered in the other.</summary>
    public sealed record OtherIsEmpty : WhyThatVersion;

    /// <summary>The other came under another student's name.</summary>
    /// <param name="Named">Whose.</param>
    public sealed record OtherIsNamed(Student Named) : WhyThatVersion
    {
        internal override WhyThatVersion Under(IDisguise disguise) => new OtherIsNamed(disguise.OfStudent(Named));
    }

    /// <summary>The newest was to count, and not all of them say when they were saved; it earns most.</summary>
    public sealed record NotAllSayWhen : WhyThatVersion;

    /// <summary>It was changed last.</summary>
    /// <param name="Changed">When.</param>
    /// <param name="Other">When the other was.</param>
    public sealed record Newer(DateTime Changed, DateTime Other) : WhyThatVersion;

    /// <summary>It earns as much.</summary>
    public sealed record EarnsAsMuch : WhyThatVersion;

    /// <summary>It earns most.</summary>
    public sealed record EarnsMost : WhyThatVersion;
}
