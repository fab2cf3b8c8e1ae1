using ClassKit.Exercises.Marking;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Marking;

/// <summary>How the points of exercises make a total, for instructors and students.</summary>
public static class TotalRuleWords
{
    /// <summary>The rule as a sentence; empty where everything counts.</summary>
    public static string Of(TotalRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return (rule.BestExercises, rule.PointsAtMost) switch
        {
            (null, null) => "",
            (null, { } points) => $"At most {Counted.Of(points, "point counts", "points count")}.",
            ({ } best, null) => $"{Best(best)}.",
            ({ } best, { } points) => $"{Best(best)}, and at most {Counted.Of(points, "point")}.",
        };
    }

    private static string Best(int exercises) =>
        exercises == 1 ? "Only the best exercise counts" : $"Only the {exercises} best exercises count";
}
