namespace ClassKit.Baking;

/// <summary>The lactic acid of sour milk products, which neutralises soda.</summary>
public static class SourDairy
{
    /// <summary>Cultured buttermilk is ripened until it has 0.8 % to 0.9 % of acid, as lactic acid.</summary>
    /// <remarks>fooduniversity.com, Cultured milks, "Buttermilk".</remarks>
    public static Band<double> ButtermilkAcidity { get; } = new(0.008, 0.0085, 0.009);

    /// <summary>Plain yogurt: about 0.9 %, from memory, with a wide band.</summary>
    public static Band<double> YogurtAcidity { get; } = new(0.007, 0.009, 0.012);
}
