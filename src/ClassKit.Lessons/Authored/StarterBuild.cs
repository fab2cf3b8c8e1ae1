using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Authored;

/// <summary>How a starter is built before the class: ripe starter, flour and water, how warm and for how long.</summary>
/// <param name="Ripe">Parts of ripe starter; above 0.</param>
/// <param name="Flour">Parts of flour; above 0.</param>
/// <param name="Water">Parts of water; above 0.</param>
/// <param name="Temperature">At which it stands.</param>
/// <param name="Hours">How long, until it is ripe; above 0.</param>
public sealed record StarterBuild(double Ripe, double Flour, double Water, Temperature Temperature, double Hours)
{
    /// <summary>A little more is built than is weighed out: it clings. Common practice, no source.</summary>
    private const double More = 1.05;

    /// <summary>What wets it: water as the pantry of the formula has it.</summary>
    public required Ingredient WettedWith { get; init; }

    /// <summary>The stage before, whose starter is the ripe one of this; null where it is a starter that is kept.</summary>
    public StarterBuild? Earlier { get; init; }

    /// <summary>Its water in percent of its flour, when a ripe one that is kept was as wet.</summary>
    public double HydrationPercent => PerHundred.Of(1 - FlourShare, FlourShare);

    /// <summary>What is mixed for a mass of starter, stage by stage, each to the full gram above.</summary>
    /// <param name="starter">The starter of a formula.</param>
    /// <param name="mass">As much as the dough takes.</param>
    public IReadOnlyList<StarterStage> StagesFor(Ingredient starter, Mass mass)
    {
        ArgumentNullException.ThrowIfNull(starter);
        var part = mass.Grams * More / (Ripe + Flour + Water);
        var last = new StarterStage(
            this,
            Hours,
            [(starter, Whole(part * Ripe)), (starter.StarterOf!, Whole(part * Flour)), (WettedWith, Whole(part * Water))]
        );
        return
        [
            .. (Earlier?.StagesFor(starter, last.Parts[0].Mass) ?? []).Select(stage =>
                stage with
                {
                    HoursBefore = stage.HoursBefore + Hours,
                }
            ),
            last,
        ];
    }

    /// <summary>What is taken for all of its stages: ripe starter for the first, flour and water for each.</summary>
    /// <param name="starter">The starter of a formula.</param>
    /// <param name="mass">As much as the dough takes.</param>
    public IReadOnlyList<(Ingredient Ingredient, Mass Mass)> For(Ingredient starter, Mass mass)
    {
        var stages = StagesFor(starter, mass);
        return [stages[0].Parts[0], All(1), All(2)];

        (Ingredient, Mass) All(int at) =>
            (stages[0].Parts[at].Ingredient, stages.Aggregate(default(Mass), (sum, stage) => sum + stage.Parts[at].Mass));
    }

    private double FlourShare => Earlier is null ? Flour / (Flour + Water) : (Ripe * Earlier.FlourShare + Flour) / (Ripe + Flour + Water);

    private static Mass Whole(double grams) => Mass.FromGrams(Math.Ceiling(grams - 1e-9));
}
