using ClassKit.Exercises.Marking;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Regrading;

/// <summary>Why all of a student's work counts otherwise than on record.</summary>
public abstract record StudentCause
{
    private StudentCause() { }

    /// <summary>There is no record of the student.</summary>
    public sealed record NotOnRecord : StudentCause;

    /// <summary>Another file was graded.</summary>
    /// <param name="Now">The one that is graded now; null for none.</param>
    /// <param name="Before">The one that was; null for none.</param>
    public sealed record OtherFile(string? Now, string? Before) : StudentCause;

    /// <summary>It is late by another time, or at another price.</summary>
    /// <param name="Now">How late it is; null if it is not.</param>
    public sealed record OtherLateness(Late? Now) : StudentCause;

    /// <summary>There is nothing left to grade.</summary>
    public sealed record NothingGraded : StudentCause;

    /// <summary>The same answers come to another total.</summary>
    /// <param name="Rule">How totals are made now.</param>
    /// <param name="Uncounted">The ids of the exercises that do not count.</param>
    public sealed record OtherTotal(TotalRule Rule, IReadOnlyList<string> Uncounted) : StudentCause;
}
