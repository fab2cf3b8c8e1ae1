using ClassKit.Baking;

namespace ClassKit.Pages.Packs;

/// <summary>The figures of a gas budget that charts and tables share.</summary>
internal static class GasFigures
{
    /// <summary>The gas once the walls are set, steam included; without an oven stage, that at the temperature of setting.</summary>
    public static Band<Volume> Baked(GasBudget budget) => budget.Course.Count > 0 && budget.Course[^1].InOven ? budget.Course[^1].Gas : budget.AtSet;

    /// <summary>How many times its own gas-free volume the dough becomes if it keeps all that gas.</summary>
    public static double Rise(GasBudget budget) => 1 + Baked(budget).Typical / budget.GasFreeVolume;
}
