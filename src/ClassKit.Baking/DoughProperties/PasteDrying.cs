using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.DoughProperties;

/// <summary>
/// What a paste of flour and liquid loses while it is cooked in an open pan and dried, before egg goes in: choux and its kind.
/// </summary>
public static class PasteDrying
{
    /// <summary>
    /// Of the water that goes into the pan, as a share. Recipes say "until it leaves a film on the pan", one to three minutes.
    /// </summary>
    public static Band<double> WaterLost { get; } = new(0.03, 0.08, 0.15);

    /// <summary>Where the band is from.</summary>
    public const string Source = "from memory: 3 % to 15 % of the water in the pan, by how long it is dried";
}
