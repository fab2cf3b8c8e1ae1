using System.Globalization;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Household;

namespace ClassKit.BenchSums.Results;

/// <summary>A sum's answers as people read them.</summary>
public static class QuantityText
{
    private const double Litre = 1000;

    /// <summary>The quantity with its unit, in metric and customary units side by side where kitchens use both.</summary>
    public static string Show(SumQuantity quantity) =>
        quantity switch
        {
            SumQuantity.OfMass { Mass.Grams: < 0 } mass => Figures.Grams(mass.Mass),
            SumQuantity.OfMass mass => mass.Mass.Ounces >= 1
                ? $"{MassNotation.Show(mass.Mass)} ({PoundsAndOunces.Show(mass.Mass)})"
                : MassNotation.Show(mass.Mass),
            SumQuantity.OfTemperature temperature => TemperatureNotation.Show(temperature.Temperature),
            SumQuantity.OfWarming warming =>
                $"{Figures.Show(warming.Difference.Kelvins)} °C of difference ({Figures.Show(warming.Difference.FahrenheitDegrees)} °F)",
            SumQuantity.OfVolume volume => volume.Volume.Millilitres >= Litre
                ? Figures.Litres(volume.Volume)
                : Figures.Millilitres(volume.Volume),
            SumQuantity.OfMinutes minutes => TimeNotation.Show(TimeSpan.FromMinutes(minutes.Minutes)),
            SumQuantity.OfPercent percent => Figures.PerHundredOf(percent.Percent),
            SumQuantity.OfTimes times => Figures.Show(times.Times) + " times",
            SumQuantity.OfCount count => count.Count.ToString(CultureInfo.InvariantCulture),
            SumQuantity.OfMoney money => money.Money.Rounded.Amount.ToString("0.00", CultureInfo.InvariantCulture),
            SumQuantity.OfGas gas => Figures.Millimoles(gas.Gas),
            SumQuantity.OfMeasure measure => $"{measure.Measure.Text}, which holds {MassNotation.Show(measure.Measure.Mass)}",
            SumQuantity.OfTruth truth => truth.Holds ? "yes" : "no",
            SumQuantity.OfRange range => $"{Show(range.Typical)}, known as {Show(range.Low)} to {Show(range.High)}",
            _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "A kind of quantity that has no text yet."),
        };
}
