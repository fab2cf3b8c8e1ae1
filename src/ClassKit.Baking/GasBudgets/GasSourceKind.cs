namespace ClassKit.Baking.GasBudgets;

/// <summary>Where the gas in a dough's bubbles comes from.</summary>
public enum GasSourceKind
{
    /// <summary>Air that mixing beats in: there from the start, and every bubble grows from it.</summary>
    Air,

    /// <summary>Carbon dioxide from fermentation.</summary>
    Yeast,

    /// <summary>Carbon dioxide from baking soda and the acid that meets it.</summary>
    Soda,

    /// <summary>Carbon dioxide from baking powder.</summary>
    BakingPowder,

    /// <summary>Carbon dioxide from baker's ammonia.</summary>
    Ammonia,

    /// <summary>Water that boils: only where a shell or a pocket gets to the boiling point before it sets.</summary>
    Steam,
}
