using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Measured;

/// <summary>A measurement that would be as expected if it had been read in another unit.</summary>
/// <param name="Symbol">That unit.</param>
/// <param name="Meant">What it would be in the class's own.</param>
public sealed record OtherUnit(string Symbol, double Meant)
{
    /// <summary>So far beside what is expected a reading may still be meant as it is written. Our choice: no source.</summary>
    private const double Slack = 0.15;

    private const double MillimetresPerInch = 25.4;

    /// <summary>The unit that a number was most likely read in; null where it is as expected, or where no other unit makes it so.</summary>
    /// <param name="value">In the class's unit, as it was typed.</param>
    /// <param name="quantity">What was measured, with what is expected and what others measured.</param>
    public static OtherUnit? Of(double value, MeasuredQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        if (Likely(quantity) is not { } likely || Fits(value, likely))
            return null;
        return InOthers(value, quantity.Unit.Symbol).FirstOrDefault(other => Fits(other.Meant, likely));
    }

    /// <summary>What is expected, or what lies near the rest; null where there is neither.</summary>
    private static Band<double>? Likely(MeasuredQuantity quantity)
    {
        if (quantity.Expected is { } expected)
            return expected;
        double[] near = [.. quantity.Points.Where(point => !point.IsFar).Select(point => point.Value).Order()];
        return near.Length < 2 ? null : new(near[0], near[near.Length / 2], near[^1]);
    }

    private static bool Fits(double value, Band<double> likely) =>
        value >= likely.Low - (Slack * Math.Abs(likely.Typical)) && value <= likely.High + (Slack * Math.Abs(likely.Typical));

    private static IEnumerable<OtherUnit> InOthers(double value, string unit) =>
        unit switch
        {
            "mm" => [new("in", value * MillimetresPerInch), new("cm", value * 10)],
            "in" => [new("mm", value / MillimetresPerInch), new("cm", value * 10 / MillimetresPerInch)],
            "g" => [new("oz", Mass.FromOunces(value).Grams)],
            "oz" => [new("g", Mass.FromGrams(value).Ounces)],
            "°C" => [new("°F", Temperature.FromFahrenheit(value).Celsius)],
            "°F" => [new("°C", Temperature.FromCelsius(value).Fahrenheit)],
            _ => [],
        };
}
