using ClassKit.Lessons.Measured;

namespace ClassKit.Pages.Observed;

/// <summary>What a class measured of one thing, beside what was expected, in words.</summary>
internal static class MeasuredText
{
    /// <summary>A measurement with its unit.</summary>
    public static string Number(double value, MeasuredQuantity quantity) =>
        NumberText.WithUnit(NumberText.Fixed(value, quantity.Unit.Decimals), quantity.Unit.Symbol);

    /// <summary>The mean, and how it lies to the prediction.</summary>
    public static string Of(MeasuredQuantity quantity)
    {
        var mean = $"Mean {Number(quantity.Mean, quantity)} of {Phrases.Count(quantity.TeamMeans.Count, "team")}";
        if (quantity.Expected is not { } band)
            return $"{mean}; nothing was predicted.";
        var (low, high) = (NumberText.Fixed(band.Low, quantity.Unit.Decimals), Number(band.High, quantity));
        var expected = $"{low} to {high} expected, typically {Number(band.Typical, quantity)}";
        return quantity.Lies switch
        {
            AgainstForecast.Less => $"{mean}: less than expected ({expected}).",
            AgainstForecast.More => $"{mean}: more than expected ({expected}).",
            AgainstForecast.AsExpected => $"{mean}: as expected ({expected}).",
            AgainstForecast.NotMeasured or AgainstForecast.NotPredicted => mean + ".",
        };
    }
}
