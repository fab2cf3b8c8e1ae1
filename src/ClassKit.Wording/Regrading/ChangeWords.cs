using System.Globalization;
using ClassKit.Grading.Regrading;

namespace ClassKit.Wording.Regrading;

/// <summary>How a student's grade changes: the points, then a line for answers that change for the same reason.</summary>
internal static class ChangeWords
{
    public static IEnumerable<string> Of(GradeChange change)
    {
        yield return $"{change.Student.Shown}: {Of(change.Before)} → {Of(change.Now)}{string.Concat(change.Why.Select(why => $"; {CauseWords.Of(why)}"))}";
        foreach (var alike in change.Answers.GroupBy(answer => string.Join("; ", answer.Why.Select(why => CauseWords.Of(why, answer.Answer.Part)))))
            yield return $"  {alike.Key}: {string.Join(", ", alike.Select(Of))}";
    }

    private static string Of(AnswerChange change)
    {
        var before = change.Before is { } points ? Number(points) : "–";
        return $"{change.Answer.Exercise.Id}.{change.Answer.Part.Id} {before} → {Number(change.Answer.Points)}";
    }

    private static string Of((decimal Points, decimal OutOf) total) => $"{Number(total.Points)} of {Number(total.OutOf)}";

    private static string Number(decimal points) => points.ToString("0.##", CultureInfo.InvariantCulture);
}
