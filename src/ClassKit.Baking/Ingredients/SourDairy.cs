using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Ingredients;

/// <summary>The lactic acid of sour milk products, which neutralises soda.</summary>
public static class SourDairy
{
    /// <summary>Cultured buttermilk is ripened until it has 0.8 % to 0.9 % of acid, as lactic acid.</summary>
    /// <remarks>fooduniversity.com, Cultured milks, "Buttermilk".</remarks>
    public static Band<double> ButtermilkAcidity { get; } = new(0.008, 0.0085, 0.009);

    /// <summary>Plain yogurt: 0.9 % to 1.2 % as made, and down to 0.75 % as bought.</summary>
    /// <remarks>barnardhealth.us, Food processing, "Yogurt": 0.9 % to 1.2 %; nine of the market 0.75 to 1.02 g in 100 mL, Korean J. Food Preserv. 25 (2018) 195, table 1.</remarks>
    public static Band<double> YogurtAcidity { get; } = new(0.0075, 0.009, 0.012);
}
