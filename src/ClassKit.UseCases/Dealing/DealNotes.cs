using System.Globalization;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.Wording.Counts;

namespace ClassKit.UseCases.Dealing;

/// <summary>What an instructor should know of a deal, one sentence each.</summary>
public static class DealNotes
{
    /// <summary>The sentences.</summary>
    public static IReadOnlyList<string> Of(DealMade deal)
    {
        ArgumentNullException.ThrowIfNull(deal);
        var (request, dealt) = (deal.Request, deal.Dealt);
        return
        [
            .. request.Earlier.Notes(dealt),
            .. deal.Spread is not null ? [Summary(deal.Spread)] : request.Wish.Set.IsNone ? (IEnumerable<string>)[] : [request.Set.Summary],
            $"{Counted.Of(dealt.Students.Count, "workbook")} of {Counted.Of(dealt.ExercisesOf(dealt.Students[0]).Count, "exercise")}, seed {request.Wish.Seed}. Hand out only what is in workbooks, or in sheets for work on paper; keep {DealtJson.FileName} and the key to yourself.",
            .. dealt.Due is { } due && request.Wish.Due is not null ? [DueWords.Of(due)] : (IEnumerable<string>)[],
            .. deal.Draws,
            .. Idle(dealt),
        ];
    }

    /// <summary>What the marking scheme's rule for totals has nothing to do.</summary>
    private static IEnumerable<string> Idle(DealtClass dealt)
    {
        var exercises = dealt.ExercisesOf(dealt.Students[0]);
        if (dealt.Marking.Total.BestExercises is { } best && best >= exercises.Count)
            yield return $"The marking scheme counts the {best} best exercises, and a student has {exercises.Count}: all of them count.";
        if (dealt.Marking.Total.PointsAtMost is { } most && exercises.Sum(SetChooser.PointsOf) is var points && points <= most)
            yield return string.Create(CultureInfo.InvariantCulture, $"The marking scheme counts at most {most} points, and a student can earn {points:0.##}: all of them count.");
    }

    private static string Summary(Spread spread)
    {
        var minutes = spread.LeastMinutes == spread.MostMinutes ? $"{spread.LeastMinutes}" : $"{spread.LeastMinutes} to {spread.MostMinutes}";
        var weight = string.Create(CultureInfo.InvariantCulture, $"each {spread.Points:0.##} points, about {minutes} minutes, and as many exercises of each skill and level");
        return spread.Different == 1
            ? $"No second set of equal weight was found, so that everyone gets the same: {weight}. Ask for fewer minutes or points, so that there is something to choose from."
            : $"{spread.Different} different sets of {spread.Exercises.Count} exercises: {weight}.";
    }
}
