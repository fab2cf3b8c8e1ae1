using System.Globalization;
using ClassKit.Grading.Regrading;
using ClassKit.Grading.Results;

namespace ClassKit.Wording.Regrading;

/// <summary>How a student's grade changes: the points, then a line for answers that change for the same reason.</summary>
public static class ChangeWords
{
    /// <summary>Its lines; those for single answers begin with two spaces.</summary>
    /// <param name="change">The change.</param>
    /// <param name="named">What an answer is called; null for the ids of its exercise and part, as corrections name them.</param>
    public static IEnumerable<string> Of(GradeChange change, Func<AnswerGrade, string>? named = null)
    {
        ArgumentNullException.ThrowIfNull(change);
        named ??= answer => $"{answer.Exercise.Id}.{answer.Part.Id}";
        yield return $"{change.Student.Shown}: {Of(change.Before)} → {Of(change.Now)}{string.Concat(change.Why.Select(why => $"; {CauseWords.Of(why)}"))}";
        foreach (
            var alike in change.Answers.GroupBy(answer =>
                string.Join("; ", answer.Why.Select(why => CauseWords.Of(why, answer.Answer.Part)))
            )
        )
            yield return $"  {alike.Key}: {string.Join(", ", alike.Select(answer => Of(answer, named)))}";
    }

    private static string Of(AnswerChange change, Func<AnswerGrade, string> named)
    {
        var before = change.Before is { } points ? Number(points) : "–";
        return $"{named(change.Answer)} {before} → {Number(change.Answer.Points)}";
    }

    private static string Of((decimal Points, decimal OutOf) total) => $"{Number(total.Points)} of {Number(total.OutOf)}";

    private static string Number(decimal points) => points.ToString("0.##", CultureInfo.InvariantCulture);
}
