namespace ClassKit.Baking.Cooking;

/// <summary>What gives a bread its heat.</summary>
public enum CookingWay
{
    /// <summary>Hot, dry air.</summary>
    Oven,

    /// <summary>Very hot air and a hot floor.</summary>
    PizzaOven,

    /// <summary>Hot air with steam let into it.</summary>
    CombiOven,

    /// <summary>Steam at the boiling point, which condenses on the bread.</summary>
    Steamer,

    /// <summary>A hot plate, from below.</summary>
    Griddle,

    /// <summary>A pan on a burner, from below.</summary>
    Pan,

    /// <summary>Hot fat all around.</summary>
    Fryer,

    /// <summary>A flame itself.</summary>
    Flame,

    /// <summary>Water at or just below the boil, all around.</summary>
    BoilingWater,

    /// <summary>Microwaves, which heat the water within.</summary>
    Microwave,
}
