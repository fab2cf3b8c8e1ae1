using ClassKit.Grading.Results;

namespace ClassKit.Grading.Regrading;

/// <summary>Why an answer is judged or credited otherwise than on record.</summary>
public abstract record AnswerCause
{
    private AnswerCause() { }

    /// <summary>There is no record of it.</summary>
    public sealed record NotOnRecord : AnswerCause;

    /// <summary>The key gives another number.</summary>
    /// <param name="Now">What it gives.</param>
    /// <param name="Before">What it gave.</param>
    public sealed record OtherKey(double Now, double Before) : AnswerCause;

    /// <summary>It turned out to be something else.</summary>
    /// <param name="Now">What it is now.</param>
    /// <param name="Before">What it was.</param>
    public sealed record OtherOutcome(Outcome Now, Outcome Before) : AnswerCause;

    /// <summary>The instructor corrected it.</summary>
    /// <param name="Reason">The instructor's.</param>
    public sealed record Corrected(string Reason) : AnswerCause;

    /// <summary>The instructor's correction is withdrawn.</summary>
    /// <param name="Reason">What it was given for.</param>
    public sealed record NotCorrectedAnyMore(string Reason) : AnswerCause;

    /// <summary>The instructor's correction sets other points.</summary>
    public sealed record CorrectedOtherwise : AnswerCause;

    /// <summary>The same outcome earns another share.</summary>
    /// <param name="Outcome">Which.</param>
    /// <param name="Now">The share of the points that it earns, 0 to 1; null where nothing can be earned.</param>
    /// <param name="Before">What it earned.</param>
    public sealed record OtherShare(Outcome Outcome, decimal? Now, decimal? Before) : AnswerCause;
}
