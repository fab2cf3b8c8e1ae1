namespace ClassKit.Lessons.Authored;

/// <summary>What is measured of every bread, whatever its lesson asks.</summary>
public static class AskedOfEveryBread
{
    /// <summary>The guess of the height, held against what is expected before the bread is.</summary>
    public static Observation Guess { get; } =
        new(
            Measure.GuessedHeight,
            "The class guessed low. What lifts this bread that nobody had thought of?",
            "The class guessed high. Which gas was counted on that this bread does not make, or does not hold?"
        );

    /// <summary>One bowl, measured once as it is mixed.</summary>
    public static Observation Mix { get; } =
        new(
            Measure.MixedTemperature,
            "Did something go in colder than the card says, or stand out too short a time? How cold was the bowl?",
            "Was something warmed too far? How long was it mixed, and in how warm a bowl?"
        );
}
