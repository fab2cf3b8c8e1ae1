using System.Globalization;
using ClassKit.Baking.Household;
using ClassKit.Baking.Quantities;

namespace ClassKit.BenchSums.Inputs;

/// <summary>How the quantities of a bench are written.</summary>
internal static class Notations
{
    public static Notation<Temperature> Temperature { get; } =
        Notation<Temperature>.Of("a temperature, as 24 C or 75 F", TemperatureNotation.TryParse);

    public static Notation<TemperatureDifference> Warming { get; } =
        Notation<TemperatureDifference>.Of("a difference of temperature, as 12 C or 22 F", TryWarming);

    public static Notation<Mass> Mass { get; } = Notation<Mass>.Of("a mass, as 500 g, 1.2 kg or 1 lb 2 oz", MassNotation.TryParse);

    public static Notation<Volume> Volume { get; } =
        Notation<Volume>.Of("a volume, as 250 mL or 1 1/2 cups", (string text, out Volume volume) =>
            VolumeNotation.TryParse(text, out volume)
        );

    public static Notation<TimeSpan> Time { get; } = Notation<TimeSpan>.Of("a time, as 45 min or 1 h 30 min", TimeNotation.TryParse);

    public static Notation<Percent> Percent { get; } = Notation<Percent>.Of("a percentage, as 2.5 %", TryPercent);

    public static Notation<double> Number { get; } = Notation<double>.Of("a number, as 2, 0.75 or 1 1/2", KitchenFraction.TryParse);

    public static Notation<int> Count { get; } = Notation<int>.Of("a whole number, as 24", TryCount);

    public static Notation<Money> Money { get; } = Notation<Money>.Of("an amount of money, as 12.50", TryMoney);

    public static Notation<Altitude> Altitude { get; } = Notation<Altitude>.Of("an altitude, as 1600 m or 5250 ft", TryAltitude);

    /// <summary>One of a few, by its name or its id; letters may be of either case, and a beginning that fits only one is enough.</summary>
    public static Notation<T> OneOf<T>(IReadOnlyList<T> known, Func<T, string> name)
        where T : notnull
    {
        var shape = $"one of {string.Join(", ", known.Select(name))}";
        return Notation<T>.Of(shape, (string text, out T found) =>
        {
            var asked = text.Trim();
            List<T> fitting = [.. known.Where(candidate => name(candidate).Equals(asked, StringComparison.OrdinalIgnoreCase))];
            if (fitting.Count == 0)
                fitting =
                [
                    .. known.Where(candidate => asked.Length > 0 && name(candidate).StartsWith(asked, StringComparison.OrdinalIgnoreCase)),
                ];
            found = fitting.Count == 1 ? fitting[0] : known[0];
            return fitting.Count == 1;
        });
    }

    private static bool TryWarming(string text, out TemperatureDifference difference)
    {
        difference = default;
        if (!TryWithUnit(text, ["C", "K", "F"], out var number, out var unit))
            return false;
        difference = unit == "F" ? TemperatureDifference.FromFahrenheitDegrees(number) : TemperatureDifference.FromKelvins(number);
        return true;
    }

    private static bool TryPercent(string text, out Percent percent)
    {
        var read = KitchenFraction.TryParse(text.Trim().TrimEnd('%').TrimEnd(), out var value);
        percent = new(value);
        return read;
    }

    private static bool TryCount(string text, out int count) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out count);

    private static bool TryMoney(string text, out Money money)
    {
        var read = decimal.TryParse(
            text.Trim().Trim('$', '€', '£').Trim(),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var amount
        );
        money = new(amount);
        return read;
    }

    private static bool TryAltitude(string text, out Altitude altitude)
    {
        altitude = default;
        if (!TryWithUnit(text, ["m", "ft"], out var number, out var unit))
            return false;
        altitude = unit == "ft" ? Inputs.Altitude.FromFeet(number) : new(number);
        return true;
    }

    /// <summary>A number, perhaps negative, and one of some units behind it, with or without a degree sign.</summary>
    private static bool TryWithUnit(string text, string[] units, out double number, out string unit)
    {
        var trimmed = text.Trim();
        var found = units.FirstOrDefault(candidate => trimmed.EndsWith(candidate, StringComparison.OrdinalIgnoreCase));
        (number, unit) = (0, found ?? "");
        return found is not null
            && double.TryParse(
                trimmed[..^found.Length].TrimEnd(' ', '°', 'º').Replace('−', '-'),
                NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out number
            )
            && double.IsFinite(number);
    }
}
