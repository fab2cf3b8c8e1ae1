using ClassKit.Exercises.Deadlines;

namespace ClassKit.Exercises.Cohorts;

/// <summary>What one student was promised otherwise than the class has it. Why is nobody's business here and stands nowhere.</summary>
/// <param name="LargePrint">True for large print: 18 points on paper, one exercise a page, a face with open shapes.</param>
/// <param name="ExtraTime">More time than the others, as a share of theirs: 0.25 for a quarter more; 0 or more.</param>
/// <param name="Due">When this student's work is due; null for when the class's is.</param>
public sealed record Arrangement(bool LargePrint, decimal ExtraTime, DueWish? Due)
{
    /// <summary>
    /// The largest share of more time that is taken for meant: four times the others' time. A judgement call; more is a slip.
    /// </summary>
    public const decimal MostExtraTime = 3;

    /// <summary>The ids of exercises that are not this student's: their set is smaller, and its total with it.</summary>
    public IReadOnlyList<string> LeavesOut { get; init; } = [];

    /// <summary>What this student need not do: ids of lessons, or titles of works of a term.</summary>
    public IReadOnlyList<string> ExcusedFrom { get; init; } = [];

    /// <summary>What holds for one work alone, a line a work.</summary>
    public IReadOnlyList<WorkArrangement> OnlyFor { get; init; } = [];

    /// <summary>
    /// What holds for a work, by any of its names: what was arranged for it alone stands over the rest, and what is left out of it alone is
    /// left out besides.
    /// </summary>
    public Arrangement In(params IReadOnlyList<string> names)
    {
        var own = OnlyFor.Where(one => names.Contains(one.Work, StringComparer.Ordinal)).ToList();
        return this with
        {
            LargePrint = own.LastOrDefault(one => one.LargePrint is not null)?.LargePrint ?? LargePrint,
            ExtraTime = own.LastOrDefault(one => one.ExtraTime is not null)?.ExtraTime ?? ExtraTime,
            Due = own.LastOrDefault(one => one.Due is not null)?.Due ?? Due,
            LeavesOut = [.. LeavesOut, .. own.SelectMany(one => one.LeavesOut)],
            OnlyFor = [],
        };
    }

    /// <summary>True if everything is as everybody has it.</summary>
    public bool IsNone =>
        !LargePrint && ExtraTime == 0 && Due is null && LeavesOut.Count == 0 && ExcusedFrom.Count == 0 && OnlyFor.Count == 0;

    /// <summary>As everybody.</summary>
    public static Arrangement None { get; } = new(false, 0, null);
}
