using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Plans;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;

namespace ClassKit.Lessons.Stations;

/// <summary>What is mixed for the starter of a bread, and when, so that it is ripe as it is weighed.</summary>
/// <param name="Card">The bread, for one team.</param>
/// <param name="Build">How it is built.</param>
/// <param name="Weighed">The minute of the class in which it is weighed for the bread by the first team, or for the stage that follows;
/// null without a plan.</param>
/// <param name="ForATeam">Ripe starter, flour and water for one team.</param>
public sealed record StarterMix(
    FormulaCard Card,
    StarterBuild Build,
    int? Weighed,
    IReadOnlyList<(Ingredient Ingredient, Mass Mass)> ForATeam
)
{
    /// <summary>The minute in which it is mixed, below 0 before the class; null without a plan.</summary>
    public int? Mixed => Weighed - Minutes(Build.Hours);

    /// <summary>The same for all that make the bread.</summary>
    public IReadOnlyList<(Ingredient Ingredient, Mass Mass)> InAll =>
        [.. ForATeam.Select(part => (part.Ingredient, part.Mass * Card.Loads))];

    /// <summary>Which mixing of its starter it is, from 1.</summary>
    public required int Stage { get; init; }

    /// <summary>How many there are.</summary>
    public required int Stages { get; init; }

    /// <summary>Every starter that is built, in the lesson's order, each of its stages by itself.</summary>
    /// <param name="cards">What the class makes.</param>
    /// <param name="plan">When; null without a plan.</param>
    public static IReadOnlyList<StarterMix> Of(IReadOnlyList<FormulaCard> cards, BenchPlan? plan)
    {
        ArgumentNullException.ThrowIfNull(cards);
        return
        [
            .. from card in cards
            from line in card.Batch.Lines
            let stages = card.StagesOf(line)
            from at in Enumerable.Range(0, stages.Count)
            select new StarterMix(
                card,
                stages[at].Build,
                Begins(plan, card) - Minutes(stages[at].HoursBefore - stages[at].Build.Hours),
                stages[at].Parts
            )
            {
                Stage = at + 1,
                Stages = stages.Count,
            },
        ];
    }

    private static int Minutes(double hours) => (int)Math.Round(hours * 60, MidpointRounding.AwayFromZero);

    private static int? Begins(BenchPlan? plan, FormulaCard card) =>
        plan?.Steps.Where(step => plan.Class.Breads[step.Load.Bread].Id == card.Bread.Formula.Id).Select(step => (int?)step.Start).Min();
}
