using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Terms.Difficulty;

/// <summary>How the exercises of a set proved over classes, and what a class can be expected to earn with them.</summary>
/// <param name="Title">What the set is called.</param>
/// <param name="Class">What the class is called; empty for a class that nobody named.</param>
/// <param name="Students">How many are in it.</param>
/// <param name="Past">All that was asked before.</param>
/// <param name="Exercises">In the order of the set.</param>
public sealed record SetDifficulty(
    string Title,
    string Class,
    int Students,
    PastDifficulty Past,
    IReadOnlyList<ExerciseDifficulty> Exercises
)
{
    /// <summary>What the class prints on; null where nothing is said.</summary>
    public Paper? Paper { get; init; }

    /// <summary>What the class can be expected to earn with the whole set; null if nobody was asked any of it.</summary>
    public PointsBand? Expected => Past.Expect(Asked(Exercises.Select(exercise => exercise.Exercise)), Class, Students);

    /// <summary>Every part of some exercises with its points.</summary>
    public static IReadOnlyList<(AskedPart Part, double Points)> Asked(IEnumerable<Exercise> exercises) =>
        [.. exercises.SelectMany(exercise => exercise.Parts.Select(part => (new AskedPart(exercise.Id, part.Id), (double)part.Points)))];
}
