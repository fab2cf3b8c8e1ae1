using System.Globalization;
using ClassKit.Grading.Regrading;
using ClassKit.Wording.Regrading;

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
            .. Lines(regraded.Changes),
            .. TypedPointsWords.Of(regraded.Now.Grades),
        ];
    }

    private static IEnumerable<string> Lines(IReadOnlyList<GradeChange> changes)
    {
        yield return changes.Count switch
        {
            0 => "Nobody's points or outcomes change.",
            1 => "One student changes:",
            _ => $"{changes.Count} students change:",
        };
        foreach (var change in changes)
        {
            yield return $"{change.Student.Shown}: {Of(change.Before)} → {Of(change.Now)}{string.Concat(change.Why.Select(why => $"; {CauseWords.Of(why)}"))}";
            foreach (var alike in change.Answers.GroupBy(answer => string.Join("; ", answer.Why.Select(why => CauseWords.Of(why, answer.Answer.Part)))))
                yield return $"  {alike.Key}: {string.Join(", ", alike.Select(Of))}";
        }
    }

    private static string Of(AnswerChange change)
    {
        var before = change.Before is { } points ? Number(points) : "–";
        return $"{change.Answer.Exercise.Id}.{change.Answer.Part.Id} {before} → {Number(change.Answer.Points)}";
    }

    private static string Of((decimal Points, decimal OutOf) total) => $"{Number(total.Points)} of {Number(total.OutOf)}";

    private static string Number(decimal points) => points.ToString("0.##", CultureInfo.InvariantCulture);
}
