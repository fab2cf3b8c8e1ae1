using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Pages.Practice;

/// <summary>An exercise with the number that it has on everything its class is dealt.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Exercise">The exercise.</param>
public sealed record NumberedExercise(int Number, Exercise Exercise)
{
    /// <summary>What a student was dealt, in order.</summary>
    public static IReadOnlyList<NumberedExercise> Of(DealtClass dealt, DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(student);
        var own = dealt.ExercisesOf(student);
        return
        [
            .. dealt
                .Exercises.Index()
                .Where(entry => own.Contains(entry.Item))
                .Select(entry => new NumberedExercise(entry.Index + 1, entry.Item)),
        ];
    }

    /// <summary>The number and letter of one of its parts: 2a.</summary>
    public string LabelOf(int part) => $"{Number}{Phrases.Letter(part)}";
}
