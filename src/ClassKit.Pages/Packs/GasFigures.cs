using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Packs;

/// <summary>The figures of a gas budget that charts and tables share.</summary>
internal static class GasFigures
{
    /// <summary>What becomes of the water that leaves in the oven, in words.</summary>
    public static string Steam(GasBudget budget) =>
        budget.SteamFate switch
        {
            { Made.High.Litres: 0 } => "none",
            { Made: { Low.Litres: 0, Typical.Litres: < 1 } } few =>
                $"{KitchenText.Gas(few.Made)} made at most; a bread in steam takes up about as much water",
            { Held.High.Litres: > 0 } steam =>
                $"{KitchenText.Gas(steam.Made)} made, {KitchenText.Gas(steam.Held.Typical)} held in the hollow, {KitchenText.Gas(steam.Lost.Typical)} lost",
            var steam => $"{KitchenText.Gas(steam.Made)} made, all of it lost through the crust",
        };

    /// <summary>How many times its own gas-free volume the dough becomes with what it holds.</summary>
    public static Band<double> Rise(GasBudget budget) => budget.Held.Baked.Map(gas => 1 + gas / budget.GasFreeVolume);

    /// <summary>What keeps it from rising further, in words.</summary>
    public static string Limit(GasBudget budget) =>
        budget.Held.Limit switch
        {
            RiseLimit.Gas => "the gas: it sets before its walls are stretched to the limit",
            RiseLimit.Walls => "its walls: there is more gas than they hold",
        };
}
