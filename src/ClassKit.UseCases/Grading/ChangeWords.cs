using System.Globalization;
using ClassKit.Grading.Regrading;
using ClassKit.Wording.Regrading;

namespace ClassKit.UseCases.Grading;

/// <summary>Who changes against earlier grades, and why.</summary>
internal static class ChangeWords
{
    /// <summary>A line for every student, and one for each reason.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<GradeChange> changes)
    {
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
