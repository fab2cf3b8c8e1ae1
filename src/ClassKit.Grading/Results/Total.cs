using ClassKit.Exercises.Marking;

namespace ClassKit.Grading.Results;

/// <summary>What a student's answers come to under a marking scheme's rule, before anything is taken off for lateness.</summary>
/// <param name="Points">Earned in the exercises that count, no more than the limit.</param>
/// <param name="OutOf">What those exercises are worth, no more than the limit.</param>
/// <param name="Uncounted">The ids of the exercises that do not count.</param>
/// <remarks>
/// Exercises rank by the share earned of what could be decided; the one that comes first in the workbook is the better of two alike. One
/// that the instructor has yet to look at altogether ranks last. The sheet of counted exercises in the gradebook says the same in formulas.
/// </remarks>
public sealed record Total(decimal Points, decimal OutOf, IReadOnlySet<string> Uncounted)
{
    /// <summary>
    /// Shares closer than this are alike: a spreadsheet, which computes in doubles, ranks the exercises in the same order.
    /// </summary>
    public const int ShareDecimals = 9;

    /// <summary>The total of a student's answers.</summary>
    /// <param name="answers">In workbook order.</param>
    /// <param name="rule">Of the marking scheme.</param>
    public static Total Of(IReadOnlyList<AnswerGrade> answers, TotalRule rule)
    {
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(rule);
        var exercises = answers
            .GroupBy(answer => answer.Exercise.Id)
            .Select(group => (Id: group.Key, Points: group.Sum(answer => answer.Points), OutOf: group.Sum(answer => answer.OutOf)))
            .ToList();
        var counted = exercises
            .OrderByDescending(exercise => Share(exercise.Points, exercise.OutOf))
            .Take(rule.BestExercises ?? exercises.Count)
            .ToList();
        var limit = rule.PointsAtMost ?? decimal.MaxValue;
        return new(
            Math.Min(limit, counted.Sum(exercise => exercise.Points)),
            Math.Min(limit, counted.Sum(exercise => exercise.OutOf)),
            exercises.Except(counted).Select(exercise => exercise.Id).ToHashSet()
        );
    }

    private static decimal Share(decimal points, decimal outOf) =>
        outOf > 0 ? Math.Round(points / outOf, ShareDecimals, MidpointRounding.AwayFromZero) : -1;
}
