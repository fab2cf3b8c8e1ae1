namespace ClassKit.Lessons;

/// <summary>What can hurt someone in a method, as far as it can be read from the method itself.</summary>
public enum Hazard
{
    /// <summary>Local codes and house rules come before anything printed.</summary>
    HouseRules,

    /// <summary>Uncooked flour, in every dough.</summary>
    RawFlour,

    /// <summary>What must be declared.</summary>
    Allergens,

    /// <summary>A burner, a griddle or a fryer is used.</summary>
    OpenFlame,

    /// <summary>Fat at oven heat or in a fryer.</summary>
    HotFat,

    /// <summary>Steam leaves a bread that it has blown up, or a steamer.</summary>
    Steam,

    /// <summary>Food that is served warm, or that stands without cooling.</summary>
    Holding,
}
