using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Altitude;
using ClassKit.Baking.Household;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;

namespace ClassKit.Pages.Numbers;

/// <summary>Masses, temperatures and times as a kitchen reads them, in the units that the class uses.</summary>
internal static partial class KitchenText
{
    private static readonly Dictionary<string, string> Signs = new()
    {
        ["1/2"] = "½",
        ["1/3"] = "⅓",
        ["2/3"] = "⅔",
        ["1/4"] = "¼",
        ["3/4"] = "¾",
        ["1/8"] = "⅛",
        ["3/8"] = "⅜",
        ["5/8"] = "⅝",
        ["7/8"] = "⅞",
    };

    /// <summary>
    /// No kitchen's scale shows less than a hundredth of an ounce: one that shows a tenth of a gram is read in grams. Common practice, no
    /// source.
    /// </summary>
    private const double FinestOunces = 0.01;

    /// <summary>
    /// A weighed mass as its scale shows it: grams, or ounces in a class that has only US units, in fractions or with decimals as the
    /// scale's division is one.
    /// </summary>
    public static string Weighed(Mass mass, Mass resolution, UnitSystem units) =>
        (units == UnitSystem.UnitedStates, OunceReading.Of(resolution)) switch
        {
            (true, { } reading) => Measure($"{reading.Show(mass.Ounces, everyDecimal: true)}\u00a0oz"),
            (true, null) when resolution.Ounces >= FinestOunces => NumberText.WithUnit(
                NumberText.Fixed(mass.Ounces, Decimals(resolution.Ounces)),
                "oz"
            ),
            _ => NumberText.WithUnit(NumberText.Fixed(mass.Grams, Decimals(resolution.Grams)), "g"),
        };

    /// <summary>What a small scale weighs, where the large one shows whole grams. As <see cref="Baking.Weighing.Scales"/> has it.</summary>
    private const double SmallGrams = 20;

    /// <summary>
    /// A mass for ordering: grams below a kilogram, kilograms to the gram above; pounds and ounces in a class that has only US units, as
    /// its scales show them. What the small scale weighs is in grams where that counts grams.
    /// </summary>
    public static string Ordered(Mass mass, ClassProfile profile) =>
        profile.Units != UnitSystem.UnitedStates ? Ordered(mass)
        : mass.Grams < SmallGrams
            ? OunceReading.Of(profile.SmallScaleResolution) is { } small
                    ? Measure($"{small.Show(mass.Ounces, everyDecimal: false)}\u00a0oz")
                : Ordered(mass)
        : OunceReading.Of(profile.ScaleResolution) is { } large ? Measure(PoundsAndOunces.Show(mass, large))
        : mass.Ounces < 1 ? NumberText.WithUnit(NumberText.AtMost(mass.Ounces, 2), "oz")
        : Measure(PoundsAndOunces.Show(mass));

    private static string Ordered(Mass mass) =>
        mass.Grams < 1000
            ? NumberText.WithUnit(NumberText.AtMost(mass.Grams, 1), "g")
            : NumberText.WithUnit(NumberText.AtMost(mass.Kilograms, 3), "kg");

    /// <summary>An amount of money to the cent.</summary>
    public static string Price(Money money) => NumberText.Fixed((double)money.Amount, 2);

    /// <summary>A household measure with its fractions as single signs: <c>1½ cups</c>; a dash where there is none.</summary>
    public static string Measure(string? measure) =>
        measure is null ? "–" : Fraction().Replace(measure, match => Signs[match.Groups["fraction"].Value]);

    /// <summary>How high a kitchen lies above the sea, to the whole metre, or to the whole foot in a class that has only US units.</summary>
    public static string Height(double metres, UnitSystem units) =>
        units == UnitSystem.UnitedStates
            ? NumberText.WithUnit(NumberText.AtMost(metres / AltitudeTable.MetresPerFoot, 0), "ft")
            : NumberText.WithUnit(NumberText.AtMost(metres, 0), "m");

    /// <summary>A temperature to the whole degree.</summary>
    public static string Temperature(Temperature temperature, UnitSystem units) =>
        Degrees(temperature.Celsius, temperature.Fahrenheit, units);

    /// <summary>What to set an oven to.</summary>
    public static string Oven(Temperature temperature, UnitSystem units)
    {
        var (celsius, fahrenheit) = TemperatureNotation.Dial(temperature);
        return Degrees(celsius, fahrenheit, units);
    }

    /// <summary>What a step is cooked in and how hot, or how warm it is: a dial goes in steps, anything else is measured.</summary>
    public static string Step(MethodStep step, UnitSystem units) =>
        (step.Way, step.Temperature) switch
        {
            (null, null) => "",
            ({ } way, null) => CookingPlace.Of(way).Name,
            ({ } way, { } temperature) => $"{CookingPlace.Of(way).Name} {Oven(temperature, units)}",
            (null, { } temperature) => Temperature(temperature, units),
        };

    /// <summary>"5 min", "40–50 min".</summary>
    public static string Minutes(int least, int most) => NumberText.WithUnit(least == most ? $"{least}" : $"{least}–{most}", "min");

    /// <summary>Computed minutes, to whole ones.</summary>
    public static string Minutes(Band<double> minutes) =>
        Minutes((int)Math.Round(minutes.Low, MidpointRounding.AwayFromZero), (int)Math.Round(minutes.High, MidpointRounding.AwayFromZero));

    /// <summary>A moment counted from the beginning: "1:05"; with a minus before it.</summary>
    public static string Clock(int minutes) => NumberText.Clock(minutes);

    /// <summary>The same with what the clock says then, where the class tells when it begins: "1:05 (10:05)".</summary>
    public static string Clock(int minutes, ClassStart? start) =>
        start is null ? Clock(minutes) : $"{Clock(minutes)} ({TimeOfDay(minutes, start)})";

    /// <summary>What the clock on the wall says: "10:05", or "10:05 am" in a class that counts to twelve.</summary>
    public static string TimeOfDay(int minutes, ClassStart start) =>
        start.After(minutes).ToString(start.CountsTwelve ? "h:mm\u00a0tt" : "HH:mm", CultureInfo.InvariantCulture).ToLowerInvariant();

    /// <summary>A gas volume to two digits, whatever its size: no model knows it better.</summary>
    public static string Gas(Volume volume) =>
        volume.Litres >= 1
            ? NumberText.WithUnit(NumberText.Fixed(volume.Litres, volume.Litres >= 10 ? 0 : 1), "L")
            : GasInMillilitres(volume);

    /// <summary>The same in millilitres, however many: a chart has one unit.</summary>
    public static string GasInMillilitres(Volume volume) =>
        NumberText.WithUnit(
            NumberText.AtMost(
                Stepped(
                    volume.Millilitres,
                    volume.Millilitres switch
                    {
                        < 97.5 => 5,
                        < 1_000 => 10,
                        < 10_000 => 100,
                        _ => 1_000,
                    }
                ),
                0
            ),
            "mL"
        );

    /// <summary>A gas volume with its range.</summary>
    public static string Gas(Band<Volume> volume) =>
        volume.High.Millilitres < 2.5 ? "none" : $"{Gas(volume.Typical)} ({Gas(volume.Low)} to {Gas(volume.High)})";

    private static double Stepped(double millilitres, double step) => Math.Round(millilitres / step, MidpointRounding.AwayFromZero) * step;

    private static string Degrees(double celsius, double fahrenheit, UnitSystem units)
    {
        var metric = NumberText.WithUnit(NumberText.AtMost(celsius, 0), "°C");
        var american = NumberText.WithUnit(NumberText.AtMost(fahrenheit, 0), "°F");
        return units switch
        {
            UnitSystem.Both => $"{metric} ({american})",
            UnitSystem.Metric => metric,
            UnitSystem.UnitedStates => american,
        };
    }

    // A space between whole and fraction goes, one that follows a plus sign stays.
    [GeneratedRegex(@"((?<=[0-9]) )?(?<fraction>1/2|[12]/3|[13]/4|[1357]/8)(?![0-9/])")]
    private static partial Regex Fraction();

    private static int Decimals(double resolution) => Math.Clamp((int)Math.Ceiling(-Math.Log10(resolution) - 1e-9), 0, 3);
}
