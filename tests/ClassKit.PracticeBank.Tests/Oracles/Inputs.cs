using ClassKit.Baking.Quantities;
using ClassKit.Exercises.Variants;

namespace ClassKit.PracticeBank.Tests.Oracles;

/// <summary>A variant's givens in the quantities of ClassKit.Baking.</summary>
internal sealed class Inputs(Variant variant)
{
    public double this[string given] => (double)variant.Givens[given];

    /// <summary>A percentage as bakers say it: 65 for 65 %.</summary>
    public double Percent(string given) => (double)(variant.Givens[given] * 100);

    /// <summary>What a key gives that finds an option right.</summary>
    public double Option(string part, string id) => variant.Exercise.Parts.Single(one => one.Id == part).Choice!.From.NumberOf(id)!.Value;

    public Mass Grams(string given) => Mass.FromGrams(this[given]);

    public Temperature Celsius(string given) => Temperature.FromCelsius(this[given]);

    public Temperature Fahrenheit(string given) => Temperature.FromFahrenheit(this[given]);

    public Money Money(string given) => new(variant.Givens[given]);
}
