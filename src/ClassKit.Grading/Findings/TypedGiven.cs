using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Findings;

/// <summary>A given that a formula has typed in, where it should point to its cell.</summary>
/// <param name="Given">Which.</param>
/// <param name="Dealt">The value dealt.</param>
/// <param name="Cell">The cell within its sheet in which it stands, such as <c>B5</c>.</param>
public sealed record TypedGiven(Given Given, decimal Dealt, string Cell);
