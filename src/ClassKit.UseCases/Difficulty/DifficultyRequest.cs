using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Difficulty;
using ClassKit.UseCases.Dealing;

namespace ClassKit.UseCases.Difficulty;

/// <summary>What looking at difficulties takes.</summary>
/// <param name="Set">The exercises to choose from.</param>
/// <param name="Past">All that was asked before.</param>
/// <param name="Class">What the class is called that they are for; empty for any.</param>
/// <param name="Students">How many are in it.</param>
public sealed record DifficultyRequest(PracticeSet Set, PastDifficulty Past, string Class, int Students)
{
    /// <summary>What the class prints on; null where nothing is said.</summary>
    public Paper? Paper { get; init; }
}
