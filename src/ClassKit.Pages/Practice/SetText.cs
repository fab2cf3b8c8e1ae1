using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Pages.Practice;

/// <summary>What a set of exercises comes to, in words; with the time of the student whose it is.</summary>
internal static class SetText
{
    public static string Of(IReadOnlyList<NumberedExercise> exercises, DealtStudent? student = null) =>
        $"{Phrases.Count(exercises.Count, "exercise")}{Numbers(exercises)}, {Phrases.Count(exercises.Sum(exercise => SetChooser.PointsOf(exercise.Exercise)), "point")}, about {Phrases.Count(exercises.Sum(exercise => student?.MinutesFor(exercise.Exercise) ?? exercise.Exercise.Minutes), "minute")}";

    /// <summary>
    /// Why a set begins at 4: a number means one exercise for everybody of the class. Nothing where the numbers run from 1.
    /// </summary>
    private static string Numbers(IReadOnlyList<NumberedExercise> exercises) =>
        exercises.Index().All(each => each.Item.Number == each.Index + 1)
            ? ""
            : $" ({Phrases.List([.. exercises.Select(exercise => $"{exercise.Number}")])} of the class’s list)";
}
