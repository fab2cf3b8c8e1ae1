namespace ClassKit.Lessons.Authored;

/// <summary>What can hurt someone in a method or a demonstration, as far as it can be read from it.</summary>
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

    /// <summary>Boiling or hot water.</summary>
    Scald,

    /// <summary>An oven is opened, and what comes out of it is carried.</summary>
    HotOven,

    /// <summary>A film of fat at oven heat.</summary>
    HotFat,

    /// <summary>A vessel full of hot fat, which can boil over and burn.</summary>
    Frying,

    /// <summary>Boiling syrup and caramel.</summary>
    HotSugar,

    /// <summary>Steam leaves a bread that it has blown up, or a steamer.</summary>
    Steam,

    /// <summary>A pot under pressure.</summary>
    PressureCooker,

    /// <summary>A plate or a pan that is hot and does not look it.</summary>
    HotPlate,

    /// <summary>Heat from above, a broiler.</summary>
    Grill,

    /// <summary>A blow torch.</summary>
    Torch,

    /// <summary>Microwaves heat unevenly, and water within can boil late.</summary>
    Microwave,

    /// <summary>Lye, caustic soda, as for pretzels.</summary>
    Lye,

    /// <summary>Dry ice or liquid nitrogen.</summary>
    DeepCold,

    /// <summary>A knife, a blade, a peeler or a skewer.</summary>
    Blade,

    /// <summary>A fixed blade that food is pushed over.</summary>
    Mandoline,

    /// <summary>A mixer that turns.</summary>
    Mixer,

    /// <summary>A blender or a food processor.</summary>
    Blender,

    /// <summary>A balloon: latex, and it bursts.</summary>
    Balloon,

    /// <summary>A probe that goes from raw to baked.</summary>
    Probe,

    /// <summary>What to do for a burn, wherever there can be one.</summary>
    FirstAid,

    /// <summary>Food that is served warm, or that stands without cooling.</summary>
    Holding,

    /// <summary>A dough or a bread that is cooled, frozen and thawed.</summary>
    Freezing,

    /// <summary>A bread that is heated again.</summary>
    Reheating,
}
