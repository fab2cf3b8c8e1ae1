using ClassKit.Lessons.Cards;

namespace ClassKit.Lessons.Sensory;

/// <summary>Two batches of one bread that differ in one thing, as a class makes them anyway: what a triangle test can set out.</summary>
/// <param name="A">What is served as A.</param>
/// <param name="OfA">What the teams are called whose batches it is.</param>
/// <param name="B">What is served as B.</param>
/// <param name="OfB">What those teams are called.</param>
public sealed record TrianglePair(FormulaCard A, IReadOnlyList<string> OfA, FormulaCard B, IReadOnlyList<string> OfB)
{
    /// <summary>
    /// A bread of a series that is changed, and the one as written: they differ in one thing. Else the bread that every team makes, the
    /// last of them because it is warmest, of other hands. Null where a class makes neither.
    /// </summary>
    /// <param name="cards">What the class makes.</param>
    /// <param name="teams">How many teams there are.</param>
    public static TrianglePair? Of(IReadOnlyList<FormulaCard> cards, int teams)
    {
        ArgumentNullException.ThrowIfNull(cards);
        if (
            cards.FirstOrDefault(card => card is { IsInstructors: false, Bread.Place.IsAsWritten: false }) is { } changed
            && cards.FirstOrDefault(card => !card.IsInstructors && card.Bread.Formula.Id == changed.Bread.Place!.OfId) is { } written
        )
            return new(written, written.TeamNames, changed, changed.TeamNames);
        return teams > 1 && cards.LastOrDefault(card => card.Loads == teams) is { } all
            ? new(all, [.. all.TeamNames.Where((_, at) => at % 2 == 0)], all, [.. all.TeamNames.Where((_, at) => at % 2 == 1)])
            : null;
    }
}
