using ClassKit.Exercises.Authoring;

namespace ClassKit.Terms.Difficulty;

/// <summary>How an exercise proved.</summary>
/// <param name="Exercise">Which.</param>
/// <param name="Expected">What the class can be expected to earn; null if nobody was asked any part.</param>
/// <param name="Parts">In its order, each with how it proved; null for one that nobody was asked.</param>
public sealed record ExerciseDifficulty(Exercise Exercise, PointsBand? Expected, IReadOnlyList<(Part Part, PartDifficulty? Proved)> Parts)
{
    /// <summary>
    /// From so many answers on, a part that everybody got, or nobody, is known well enough although it has no difficulty.
    /// </summary>
    private const int EnoughOneSided = 30;

    /// <summary>True if every part is known well enough to balance sets by.</summary>
    public bool IsEnough =>
        Expected is not null
        && Parts.All(part =>
            part.Proved is { } proved && (proved.IsEnough || (proved.Gap is not null && proved.Answers >= EnoughOneSided))
        );

    /// <summary>How an exercise proved for a class.</summary>
    public static ExerciseDifficulty Of(Exercise exercise, PastDifficulty past, string named, int students)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(past);
        return new(
            exercise,
            past.Expect(SetDifficulty.Asked([exercise]), named, students),
            [.. exercise.Parts.Select(part => (part, past.Of(new(exercise.Id, part.Id))))]
        );
    }
}
