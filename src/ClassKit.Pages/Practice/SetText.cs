using ClassKit.Exercises.Choosing;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Practice;

/// <summary>What a set of exercises comes to, in words.</summary>
internal static class SetText
{
    public static string Of(IReadOnlyList<NumberedExercise> exercises) =>
        $"{Phrases.Count(exercises.Count, "exercise")}, {Phrases.Count(exercises.Sum(exercise => SetChooser.PointsOf(exercise.Exercise)), "point")}, about {Phrases.Count(exercises.Sum(exercise => exercise.Exercise.Minutes), "minute")}";
}
