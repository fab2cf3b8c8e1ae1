using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.GasBudgets;

/// <summary>What becomes of the water that leaves in the oven: all of it is steam, and next to none of that is held.</summary>
/// <param name="WaterLost">The loss in baking, taken as water.</param>
/// <param name="Made">All steam, at the boiling point: what is held and what is lost.</param>
/// <param name="Held">What fills the hollow once its walls are set; none in a crumb, whose bubbles hold vapour only beside their
/// gas.</param>
/// <param name="Lost">What left through pores, cracks and the crust.</param>
/// <param name="Explanation">How it was computed, by typical values.</param>
/// <remarks>Water also leaves below the boiling point, from the surface; its vapour would take up as much room once it is as hot.</remarks>
public sealed record SteamFate(Band<Mass> WaterLost, Band<Volume> Made, Band<Volume> Held, Band<Volume> Lost, Explanation Explanation)
    : IExplained
{
    internal static SteamFate Of(Mass dough, GasHolding holding, GasPoint end, Pressure pressure)
    {
        var water = holding.BakingLoss.Map(loss => dough * (end.InOven ? Math.Max(0, loss) : 0));
        var lost = water.Map(grams => SteamPocket.Boiled(grams, pressure));
        var made = lost.With(end.Steam, (gone, kept) => gone + kept);
        return new(
            water,
            made,
            end.Steam,
            lost,
            new(
                "Steam made, held and lost",
                [
                    new(
                        "water that leaves in the heat",
                        "dough × loss in the heat",
                        $"{Figures.Grams(dough)} × {Figures.Percent(water.Typical / dough)}",
                        Figures.Grams(water.Typical)
                    ),
                    new(
                        "steam lost",
                        $"water × volume of a gram of steam, at {Figures.Celsius(Saturation.BoilingPoint(pressure))} and {Figures.Hectopascals(pressure)}",
                        $"{Figures.Grams(water.Typical)} × {Figures.Show(Saturation.VapourLitresPerGram(Saturation.BoilingPoint(pressure)))} L/g",
                        Figures.Litres(lost.Typical)
                    ),
                    ExplainedStep.Given(
                        "steam held",
                        "in the hollow when the walls set, as far as the skin stretches",
                        Figures.Millilitres(end.Steam.Typical)
                    ),
                    new(
                        "steam made",
                        "lost + held",
                        $"{Figures.Litres(lost.Typical)} + {Figures.Millilitres(end.Steam.Typical)}",
                        Figures.Litres(made.Typical)
                    ),
                ],
                $"Loss in the heat as of a {holding.Name}: {Figures.Percent(holding.BakingLoss.Low)} to {Figures.Percent(holding.BakingLoss.High)}. Source: {holding.LossSource}. Steam at the boiling point by IAPWS-IF97."
            )
        );
    }
}
