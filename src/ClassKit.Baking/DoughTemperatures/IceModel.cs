namespace ClassKit.Baking.DoughTemperatures;

/// <summary>How the ice that cools a dough's water is counted. All three are in print and they disagree: see <see cref="Ice"/>.</summary>
public enum IceModel
{
    /// <summary>
    /// Ice takes the place of some of the water, and its melt warms up with the rest: a closed heat balance, and the default.
    /// </summary>
    Replacing,

    /// <summary>Ice takes the place of some of the water, and only its melting is counted. Asks for more ice than needed.</summary>
    ReplacingMeltOnly,

    /// <summary>Ice is added on top of the water, and its melt warms up to the wanted temperature. The dough gets wetter.</summary>
    Added,
}
