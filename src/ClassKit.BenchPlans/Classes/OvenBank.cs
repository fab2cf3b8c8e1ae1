using ClassKit.Baking.Quantities;

namespace ClassKit.BenchPlans.Classes;

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
    TemperatureDifference CoolingPerMinute
)
{
    /// <summary>How fast an oven gets hotter where nobody has measured it: 10 °C a minute. Common practice, no source.</summary>
    public static TemperatureDifference UsualWarming { get; } = TemperatureDifference.FromKelvins(10);

    /// <summary>
    /// How fast an oven gets cooler with its door ajar where nobody has measured it: 5 °C a minute. Common practice, no source.
    /// </summary>
    public static TemperatureDifference UsualCooling { get; } = TemperatureDifference.FromKelvins(5);

    /// <summary>
    /// How hot an oven is at the end of a bake, having begun it at the heat of the first stage: one that is turned down does not get there
    /// at once.
    /// </summary>
    /// <param name="stages">What the dial said, and for how many minutes; at least one.</param>
    public Temperature HeatAfter(IEnumerable<(Temperature Dial, int Minutes)> stages)
    {
        ArgumentNullException.ThrowIfNull(stages);
        return stages
            .Aggregate((Temperature?)null, (heat, stage) => heat is { } now ? HeatAfter(now, stage.Dial, stage.Minutes) : stage.Dial)!
            .Value;
    }

    /// <summary>How hot an oven is some minutes after its dial was turned.</summary>
    public Temperature HeatAfter(Temperature from, Temperature dial, int minutes)
    {
        var degrees = dial.Celsius - from.Celsius;
        var reached = minutes * (degrees > 0 ? WarmingPerMinute.Kelvins : CoolingPerMinute.Kelvins);
        return Math.Abs(degrees) <= reached ? dial : Temperature.FromCelsius(from.Celsius + Math.Sign(degrees) * reached);
    }

    /// <summary>Whole minutes from the end of one bake to the beginning of another at a different temperature; 0 at the same.</summary>
    /// <param name="from">The oven as it is: see <see cref="HeatAfter(IEnumerable{ValueTuple{Temperature, int}})"/>.</param>
    /// <param name="to">As it has to be.</param>
    public int ChangeMinutes(Temperature from, Temperature to)
    {
        var degrees = to.Celsius - from.Celsius;
        var rate = degrees > 0 ? WarmingPerMinute.Kelvins : CoolingPerMinute.Kelvins;
        // A hair below the whole minute is not another minute: temperatures read in °F come with rounding noise.
        return (int)Math.Ceiling(Math.Abs(degrees) / rate - 1e-6);
    }
}
