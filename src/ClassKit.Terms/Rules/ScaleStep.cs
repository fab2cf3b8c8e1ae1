namespace ClassKit.Terms.Rules;

/// <summary>One grade of a scale.</summary>
/// <param name="Grade">A word, a letter or a number.</param>
/// <param name="From">The least rounded percentage that earns it, 0 to 100.</param>
public sealed record ScaleStep(string Grade, decimal From);
