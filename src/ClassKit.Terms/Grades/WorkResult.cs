using ClassKit.Terms.Work;

namespace ClassKit.Terms.Grades;

/// <summary>What a piece of work comes to for one student.</summary>
/// <param name="Assignment">The work.</param>
/// <param name="Sittings">Every sitting, in order.</param>
/// <param name="Counted">The sitting that decides; null where none was marked.</param>
/// <param name="Standing">How it stands in the grade.</param>
/// <param name="Share">What it comes to, 0 to 1; null where it stands for nothing.</param>
public sealed record WorkResult(
    Assignment Assignment,
    IReadOnlyList<SittingResult> Sittings,
    SittingResult? Counted,
    Standing Standing,
    decimal? Share
)
{
    /// <summary>True while a mark is still to come.</summary>
    public bool IsOpen => Standing is Standing.Missing or Standing.NotDue;

    /// <summary>How many of its answers the instructor has not decided on yet: the share may still change.</summary>
    public int Undecided => Standing is Standing.Counts or Standing.Dropped ? Sittings.Sum(sitting => sitting.Attempt.Mark.Undecided) : 0;
}
