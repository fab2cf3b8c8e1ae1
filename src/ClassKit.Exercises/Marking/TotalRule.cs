namespace ClassKit.Exercises.Marking;

/// <summary>How the points of exercises make a student's total.</summary>
/// <param name="BestExercises">Only so many exercises count, those in which the student earned the greatest shares; 1 or more, null for all.</param>
/// <param name="PointsAtMost">More points than these are not counted; 1 or more, null for no limit.</param>
public sealed record TotalRule(int? BestExercises, int? PointsAtMost)
{
    /// <summary>Everything counts.</summary>
    public static TotalRule Everything { get; } = new(null, null);

    /// <summary>The rule as a sentence for instructors and students; empty where everything counts.</summary>
    public string Words => (BestExercises, PointsAtMost) switch
    {
        (null, null) => "",
        (null, { } points) => $"At most {Points(points)} {(points == 1 ? "counts" : "count")}.",
        ({ } best, null) => $"{Best(best)}.",
        ({ } best, { } points) => $"{Best(best)}, and at most {Points(points)}.",
    };

    private static string Points(int points) => points == 1 ? "1 point" : $"{points} points";

    private static string Best(int exercises) => exercises == 1 ? "Only the best exercise counts" : $"Only the {exercises} best exercises count";
}
