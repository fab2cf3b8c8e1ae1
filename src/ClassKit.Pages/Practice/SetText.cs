using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Pages.Practice;

/// <summary>What a set of exercises comes to, in words; with the time of the student whose it is.</summary>
internal static class SetText
{
    public static string Of(IReadOnlyList<NumberedExercise> exercises, DealtStudent? student = null) =>
        $"{Phrases.Count(exercises.Count, "exercise")}, {Phrases.Count(exercises.Sum(exercise => SetChooser.PointsOf(exercise.Exercise)), "point")}, about {Phrases.Count(exercises.Sum(exercise => student?.MinutesFor(exercise.Exercise) ?? exercise.Exercise.Minutes), "minute")}";
}
