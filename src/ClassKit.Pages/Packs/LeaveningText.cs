using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;

namespace ClassKit.Pages.Packs;

/// <summary>Leavenings and sources of gas in words.</summary>
internal static class LeaveningText
{
    /// <summary>What makes a bread rise.</summary>
    public static string Of(Leavening leavening) => leavening switch
    {
        Leavening.Steam => "steam",
        Leavening.Yeast => "yeast",
        Leavening.Chemical => "soda or baking powder",
    };

    /// <summary>What makes the gas.</summary>
    public static string Of(GasSourceKind kind) => kind switch
    {
        GasSourceKind.Air => "Air beaten in",
        GasSourceKind.Yeast => "Yeast",
        GasSourceKind.Soda => "Soda and acid",
        GasSourceKind.BakingPowder => "Baking powder",
        GasSourceKind.Steam => "Steam",
    };
}
