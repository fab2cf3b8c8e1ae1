namespace ClassKit.Exercises.Marking;

/// <summary>How the points of exercises make a student's total.</summary>
/// <param name="BestExercises">Only so many exercises count, those in which the student earned the greatest shares; 1 or more, null for
/// all.</param>
/// <param name="PointsAtMost">More points than these are not counted; 1 or more, null for no limit.</param>
public sealed record TotalRule(int? BestExercises, int? PointsAtMost)
{
    /// <summary>Everything counts.</summary>
    public static TotalRule Everything { get; } = new(null, null);
}
