using ClassKit.Baking;

namespace ClassKit.Pages.Packs;

/// <summary>The figures of a gas budget that charts and tables share.</summary>
internal static class GasFigures
{
    /// <summary>All gas made once the walls are set, steam included; without an oven stage, that at the temperature of setting.</summary>
    public static Band<Volume> Made(GasBudget budget) => budget.Course.Count > 0 && budget.Course[^1].InOven ? budget.Course[^1].Gas : budget.AtSet;

    /// <summary>How many times its own gas-free volume the dough becomes with what it holds.</summary>
    public static Band<double> Rise(GasBudget budget) => budget.Held.Baked.Map(gas => 1 + gas / budget.GasFreeVolume);

    /// <summary>What keeps it from rising further, in words.</summary>
    public static string Limit(GasBudget budget) => budget.Held.Limit switch
    {
        RiseLimit.Gas => "the gas: it sets before its walls are stretched to the limit",
        RiseLimit.Walls => "its walls: there is more gas than they hold",
    };
}
