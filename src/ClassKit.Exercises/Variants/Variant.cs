using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Variants;

/// <summary>One draw of an exercise's givens.</summary>
/// <param name="Exercise">The exercise drawn from.</param>
/// <param name="Givens">Every given's value by its id.</param>
/// <param name="Answers">What each part's key gives, by the part's id.</param>
public sealed record Variant(Exercise Exercise, IReadOnlyDictionary<string, decimal> Givens, IReadOnlyDictionary<string, double> Answers)
{
    /// <summary>Every given's value by its id.</summary>
    public IReadOnlyDictionary<string, decimal> Givens { get; init; } = ValuesByName<decimal>.Of(Givens, ExerciseNames.Of(Exercise).Givens);

    /// <summary>What each part's key gives, by the part's id.</summary>
    public IReadOnlyDictionary<string, double> Answers { get; init; } = ValuesByName<double>.Of(Answers, ExerciseNames.Of(Exercise).Parts);
}
