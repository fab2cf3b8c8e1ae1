using System.Globalization;
using ClassKit.Baking.Household;

namespace ClassKit.BenchSums.Results;

/// <summary>A sum's answers as people read them.</summary>
public static class QuantityText
{
    private const double Litre = 1000;

    /// <summary>The quantity with its unit, in metric and customary units side by side where kitchens use both.</summary>
    public static string Show(SumQuantity quantity) => quantity switch
    {
        SumQuantity.OfMass { Mass.Grams: < 0 } mass => Plain(mass.Mass.Grams, 2) + " g",
        SumQuantity.OfMass mass => mass.Mass.Ounces >= 1 ? $"{MassNotation.Show(mass.Mass)} ({PoundsAndOunces.Show(mass.Mass)})" : MassNotation.Show(mass.Mass),
        SumQuantity.OfTemperature temperature => TemperatureNotation.Show(temperature.Temperature),
        SumQuantity.OfWarming warming => $"{Plain(warming.Difference.Kelvins, 1)} °C of difference ({Plain(warming.Difference.FahrenheitDegrees, 1)} °F)",
        SumQuantity.OfVolume volume => volume.Volume.Millilitres >= Litre ? Plain(volume.Volume.Litres, 2) + " L" : Plain(volume.Volume.Millilitres, volume.Volume.Millilitres < 10 ? 2 : 0) + " mL",
        SumQuantity.OfMinutes minutes => TimeNotation.Show(TimeSpan.FromMinutes(minutes.Minutes)),
        SumQuantity.OfPercent percent => Plain(percent.Percent, 2) + " %",
        SumQuantity.OfTimes times => Plain(times.Times, 3) + " times",
        SumQuantity.OfCount count => count.Count.ToString(CultureInfo.InvariantCulture),
        SumQuantity.OfMoney money => money.Money.Rounded.Amount.ToString("0.00", CultureInfo.InvariantCulture),
        SumQuantity.OfGas gas => Plain(gas.Gas.Moles * 1000, 2) + " mmol",
        SumQuantity.OfMeasure measure => $"{measure.Measure.Text}, which holds {MassNotation.Show(measure.Measure.Mass)}",
        SumQuantity.OfTruth truth => truth.Holds ? "yes" : "no",
        SumQuantity.OfRange range => $"{Show(range.Typical)}, known as {Show(range.Low)} to {Show(range.High)}",
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "A kind of quantity that has no text yet."),
    };

    /// <summary>Rounded, halves away from zero, without trailing zeros; a small number keeps three digits.</summary>
    internal static string Plain(double value, int decimals)
    {
        var enough = value != 0 && Math.Abs(value) < 1 ? Math.Max(decimals, 2 - (int)Math.Floor(Math.Log10(Math.Abs(value)))) : decimals;
        return Math.Round(value, Math.Min(enough, 12), MidpointRounding.AwayFromZero).ToString("#,0.############", CultureInfo.InvariantCulture);
    }
}
