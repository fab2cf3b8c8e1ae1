using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>What a dough's water could do as steam, beside what a rise needs of it.</summary>
/// <param name="BoilingPoint">At the kitchen's altitude.</param>
/// <param name="Water">All water in the dough, the flour's own too.</param>
/// <param name="PerPercentOfWater">The steam from a hundredth of that water.</param>
/// <param name="Rise">The gas that the assumed rise takes: see <see cref="GasBudgetSettings.Rise"/>.</param>
/// <param name="WaterToFillRise">The water that fills that rise with steam alone.</param>
/// <param name="ShareOfWater">What share of all the water that is, 0 to 1.</param>
/// <param name="Explanation">How it was computed.</param>
public sealed record SteamSupply(
    Temperature BoilingPoint,
    Mass Water,
    Volume PerPercentOfWater,
    Volume Rise,
    Mass WaterToFillRise,
    double ShareOfWater,
    Explanation Explanation
);
