using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.FollowUps;

/// <summary>An exercise that a student is to practise, and why.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Lost">The points that the student lost on its skill.</param>
/// <param name="IsAgain">True for an exercise that the student has done already and gets with fresh numbers.</param>
/// <param name="Met">The misconceptions that the student met in this very exercise.</param>
public sealed record FollowUpExercise(Exercise Exercise, decimal Lost, bool IsAgain, IReadOnlyList<Misconception> Met);
