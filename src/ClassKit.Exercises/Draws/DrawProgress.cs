namespace ClassKit.Exercises.Draws;

/// <summary>How many variants are drawn. Whoever is told of it may end the drawing by an exception.</summary>
/// <param name="Done">How many are.</param>
/// <param name="Total">How many are asked for; givens may allow fewer.</param>
public readonly record struct DrawProgress(int Done, int Total);
