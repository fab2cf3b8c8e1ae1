using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings;

namespace ClassKit.Grading.Results;

/// <summary>What became of one returned file.</summary>
/// <param name="File">Its path within what was returned.</param>
/// <param name="Digest">The SHA-256 of its bytes in lower-case hexadecimal; null if they were not read.</param>
/// <param name="Modified">When it was changed last by what stands inside; null if it does not say.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="Student">Whose it is, or seems to be by its name; null if nobody's.</param>
/// <param name="Why">Why it does not count; null for one that does.</param>
public sealed record AccountedFile(string File, string? Digest, DateTime? Modified, FileFate Fate, Student? Student, Uncounted? Why)
{
    /// <summary>Which deal it is from, if it is another than the one that was graded; else null.</summary>
    public OtherDeal? Other { get; init; }

    /// <summary>What went wrong in our own program, for the instructor to report; null if nothing did.</summary>
    public string? Fault { get; init; }
}
