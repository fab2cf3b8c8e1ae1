using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Dealing;

/// <summary>What dealing takes.</summary>
/// <param name="Set">What is dealt.</param>
/// <param name="Roster">To whom.</param>
/// <param name="Wish">How.</param>
public sealed record DealRequest(PracticeSet Set, Roster Roster, DealWish Wish)
{
    /// <summary>The deal that this one is sat again for; null for a first sitting.</summary>
    public DealtClass? Replaces { get; init; }

    /// <summary>A deal that is added to and never replaced.</summary>
    public EarlierDeal Earlier { get; init; } = EarlierDeal.None;
}
