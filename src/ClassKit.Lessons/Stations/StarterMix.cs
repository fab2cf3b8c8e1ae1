using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Plans;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;

namespace ClassKit.Lessons.Stations;

/// <summary>What is mixed for the starter of a bread, and when, so that it is ripe as it is weighed.</summary>
/// <param name="Card">The bread, for one team.</param>
/// <param name="Build">How it is built.</param>
/// <param name="Weighed">The minute of the class in which the first team begins the bread; null without a plan.</param>
/// <param name="ForATeam">Ripe starter, flour and water for one team.</param>
public sealed record StarterMix(FormulaCard Card, StarterBuild Build, int? Weighed, IReadOnlyList<(Ingredient Ingredient, Mass Mass)> ForATeam)
{
    /// <summary>The minute in which it is mixed, below 0 before the class; null without a plan.</summary>
    public int? Mixed => Weighed - (int)Math.Round(Build.Hours * 60, MidpointRounding.AwayFromZero);

    /// <summary>The same for all that make the bread.</summary>
    public IReadOnlyList<(Ingredient Ingredient, Mass Mass)> InAll => [.. ForATeam.Select(part => (part.Ingredient, part.Mass * Card.Loads))];

    /// <summary>Every starter that is built, in the lesson's order.</summary>
    /// <param name="cards">What the class makes.</param>
    /// <param name="plan">When; null without a plan.</param>
    public static IReadOnlyList<StarterMix> Of(IReadOnlyList<FormulaCard> cards, BenchPlan? plan)
    {
        ArgumentNullException.ThrowIfNull(cards);
        return
        [
            .. from card in cards
               where card.Bread.StarterBuild is not null
               let parts = card.Batch.Lines.SelectMany(card.BuildOf).ToList()
               where parts.Count > 0
               select new StarterMix(card, card.Bread.StarterBuild!, Begins(plan, card), parts),
        ];
    }

    private static int? Begins(BenchPlan? plan, FormulaCard card) =>
        plan?.Steps.Where(step => plan.Class.Breads[step.Load.Bread].Id == card.Bread.Formula.Id).Select(step => (int?)step.Start).Min();
}
