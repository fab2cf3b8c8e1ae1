using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Jobs;

/// <summary>What a job is to do.</summary>
/// <param name="Title">What the instructor asked for, as a heading.</param>
/// <param name="Next">The page to go on with, below the desk's room.</param>
/// <param name="NextTitle">What that page is called.</param>
/// <param name="Work">Does it.</param>
public sealed record JobOrder(string Title, string Next, string NextTitle, Func<Run, JobEnd> Work)
{
    /// <summary>True to go on by itself where all went well: the next page shows what came of it.</summary>
    public bool GoesOn { get; init; }

    /// <summary>
    /// What was made where all went well: a page of it below the desk's room, what to call that, and where it lies; null for nothing to
    /// open.
    /// </summary>
    public (string Page, string Words, string Folder)? Made { get; init; }
}
