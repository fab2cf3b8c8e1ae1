using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Terms.Difficulty;

namespace ClassKit.UseCases.Dealing;

/// <summary>What dealing takes.</summary>
/// <param name="Set">What is dealt.</param>
/// <param name="Roster">To whom.</param>
/// <param name="Wish">How.</param>
public sealed record DealRequest(PracticeSet Set, Roster Roster, DealWish Wish)
{
    /// <summary>The deal that this one is sat again for; null for a first sitting.</summary>
    public DealtClass? Replaces { get; init; }

    /// <summary>What earlier classes earned; null if nobody named it.</summary>
    public PastDifficulty? Past { get; init; }

    /// <summary>
    /// What a student of the class can be expected to earn with each exercise of which enough is known, by its id; null where nothing is
    /// known of earlier classes.
    /// </summary>
    internal IReadOnlyDictionary<string, double>? Expected =>
        Past is null
            ? null
            : Set
                .Pool.Select(exercise => ExerciseDifficulty.Of(exercise, Past, Roster.Cohort, Roster.Students.Count))
                .Where(proved => proved.IsEnough)
                .ToDictionary(proved => proved.Exercise.Id, proved => proved.Expected!.Middle);

    /// <summary>A deal that is added to and never replaced.</summary>
    public EarlierDeal Earlier { get; init; } = EarlierDeal.None;
}
