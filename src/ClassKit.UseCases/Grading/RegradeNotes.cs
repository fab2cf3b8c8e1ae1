namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor should know of grading again: who changes, and why.</summary>
public static class RegradeNotes
{
    /// <summary>A line for all that differs from the earlier grading.</summary>
    public static IReadOnlyList<string> Of(RegradeResult regraded)
    {
        ArgumentNullException.ThrowIfNull(regraded);
        return
        [
            .. DeadlineWords.Of(regraded.Now.Deadline),
            .. JudgeWords.Differences(regraded.Earlier.Judging, regraded.Now.Grades),
            regraded.Changes.Count switch
            {
                0 => "Nobody's points or outcomes change.",
                1 => "One student changes:",
                _ => $"{regraded.Changes.Count} students change:",
            },
            .. ChangeWords.Of(regraded.Changes),
            .. TypedPointsWords.Of(regraded.Now.Grades),
        ];
    }
}
