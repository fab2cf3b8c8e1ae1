namespace ClassKit.Lessons.Classes;

/// <summary>Which units pages show.</summary>
public enum UnitSystem
{
    /// <summary>Grams and degrees Celsius first, US units behind.</summary>
    Both,

    /// <summary>Grams and degrees Celsius only.</summary>
    Metric,

    /// <summary>Ounces, cups and degrees Fahrenheit only.</summary>
    UnitedStates,
}
