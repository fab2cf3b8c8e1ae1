using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>An exercise with the lines that its pieces stand on.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Places">Where its pieces stand in its file.</param>
public sealed record PlacedExercise(Exercise Exercise, ExercisePlaces Places);
