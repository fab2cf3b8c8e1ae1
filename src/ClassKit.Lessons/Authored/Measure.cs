namespace ClassKit.Lessons.Authored;

/// <summary>What is measured of a bread: what its lesson asks, and the last two of every bread.</summary>
public enum Measure
{
    /// <summary>Batter or dough in one piece before baking, in grams.</summary>
    MassBefore,

    /// <summary>One piece after baking, in grams.</summary>
    MassAfter,

    /// <summary>What it weighs less after baking, in percent of what it weighed before: worked out, not weighed.</summary>
    BakeLoss,

    /// <summary>From the bottom to the highest point, in millimetres.</summary>
    Height,

    /// <summary>At its widest, in millimetres.</summary>
    Diameter,

    /// <summary>In the middle, as it comes out of the oven, in degrees Celsius.</summary>
    InternalTemperature,

    /// <summary>What somebody guesses of the height before anything is weighed, in millimetres; asked of every bread.</summary>
    GuessedHeight,

    /// <summary>Batter or dough as it is mixed, in degrees Celsius; one bowl, asked of every bread.</summary>
    MixedTemperature,
}
