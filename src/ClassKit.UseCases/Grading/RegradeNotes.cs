using ClassKit.Notes;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor should know of grading again: who changes, and why.</summary>
public static class RegradeNotes
{
    /// <summary>A note for all that differs from the earlier grading.</summary>
    public static IReadOnlyList<Note> Of(RegradeResult regraded)
    {
        ArgumentNullException.ThrowIfNull(regraded);
        return
        [
            .. DeadlineNotes.Of(regraded.Now.Deadline),
            .. JudgeNotes.Differences(regraded.Earlier.Judging, regraded.Now.Grades),
            new Note.Changes(regraded.Changes.Count),
            .. regraded.Changes.Select(change => new Note.Changed(change)),
            .. GradebookNotes.Of(regraded.Now.Grades),
        ];
    }
}
