using ClassKit.Baking;

namespace ClassKit.BenchPlans;

/// <summary>The ovens that a class shares. All are alike, and each has one temperature at a time.</summary>
/// <param name="Count">How many; 0 or more.</param>
/// <param name="Places">How many tins or trays one holds at once; 1 or more.</param>
/// <param name="HeatUpMinutes">From cold, switched on as the class begins, to the first bake; 0 if they are hot by then.</param>
/// <param name="WarmingPerMinute">How fast a hot oven gets hotter; above 0.</param>
/// <param name="CoolingPerMinute">How fast it gets cooler; above 0.</param>
public sealed record OvenBank(
    int Count,
    int Places,
    int HeatUpMinutes,
    TemperatureDifference WarmingPerMinute,
    TemperatureDifference CoolingPerMinute)
{
    /// <summary>How fast an oven gets hotter where nobody has measured it: 10 °C a minute. Common practice, no source.</summary>
    public static TemperatureDifference UsualWarming { get; } = TemperatureDifference.FromKelvins(10);

    /// <summary>How fast an oven gets cooler with its door ajar where nobody has measured it: 5 °C a minute. Common practice, no source.</summary>
    public static TemperatureDifference UsualCooling { get; } = TemperatureDifference.FromKelvins(5);

    /// <summary>Whole minutes from the end of one bake to the beginning of another at a different temperature; 0 at the same.</summary>
    public int ChangeMinutes(Temperature from, Temperature to)
    {
        var degrees = to.Celsius - from.Celsius;
        var rate = degrees > 0 ? WarmingPerMinute.Kelvins : CoolingPerMinute.Kelvins;
        // A hair below the whole minute is not another minute: temperatures read in °F come with rounding noise.
        return (int)Math.Ceiling(Math.Abs(degrees) / rate - 1e-6);
    }
}
