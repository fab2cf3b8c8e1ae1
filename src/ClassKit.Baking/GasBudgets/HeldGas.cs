using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>How much of its gas a dough can be expected to hold, and what becomes of it.</summary>
/// <param name="Holding">What is assumed of the dough.</param>
/// <param name="OnBench">In the dough as it goes into the oven.</param>
/// <param name="Baked">In it once the walls are set.</param>
/// <param name="ShareOnBench">What share of the gas made until then that is, 0 to 1, by typical values; null if none was made.</param>
/// <param name="ShareBaked">The same once the walls are set; null where steam blew it up, of which there is far more than is held.</param>
/// <param name="OverproofedAfter">The minute at which the dough is full on the bench, by typical values: every minute after it loses gas;
/// null if it never is.</param>
/// <param name="Limit">What keeps it from rising further.</param>
/// <param name="SpecificVolume">Of the baked bread, in mL/g: for holding against a volume measured with seeds.</param>
/// <param name="Explanation">How it was computed, by typical values.</param>
public sealed record HeldGas(
    GasHolding Holding,
    Band<Volume> OnBench,
    Band<Volume> Baked,
    double? ShareOnBench,
    double? ShareBaked,
    double? OverproofedAfter,
    RiseLimit Limit,
    Band<double> SpecificVolume,
    Explanation Explanation
) : IExplained;
