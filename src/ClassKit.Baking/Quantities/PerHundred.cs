namespace ClassKit.Baking.Quantities;

/// <summary>
/// Between a share of a whole, 0.65, and the same in percent, 65. Nobody else among computations of doughs knows the 100.
/// </summary>
public static class PerHundred
{
    /// <summary>A share in percent: 65 for 0.65.</summary>
    public static double Of(double share) => share * 100;

    /// <summary>How many percent of <paramref name="whole"/> a part is; both in the same unit.</summary>
    public static double Of(double part, double whole) => part * 100 / whole;

    /// <summary>What so many percent are as a share: 0.65 for 65.</summary>
    public static double Share(double percent) => percent / 100;

    /// <inheritdoc cref="Share(double)"/>
    public static double? Share(double? percent) => percent / 100;

    /// <summary>So many percent of a whole, in its unit.</summary>
    public static double Part(double percent, double whole) => whole * percent / 100;
}
