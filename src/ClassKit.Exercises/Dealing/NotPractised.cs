using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Dealing;

/// <summary>An exercise that is left out of practice before work is handed in.</summary>
/// <param name="Exercise">Which.</param>
/// <param name="GivesAway">True if its answers are everybody's; false if every variant of it was dealt.</param>
public sealed record NotPractised(Exercise Exercise, bool GivesAway);
