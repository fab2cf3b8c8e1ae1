using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Observations;

/// <summary>The unit that a class measures in.</summary>
/// <param name="Symbol">As written behind a number: <c>g</c>.</param>
/// <param name="Decimals">As many as an instrument of a teaching kitchen shows.</param>
/// <param name="Of">A measure's own number in this unit.</param>
public sealed record ObservedUnit(string Symbol, int Decimals, Func<double, double> Of)
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>Grams, millimetres and degrees Celsius; ounces, inches and degrees Fahrenheit in a class that has only US units.</summary>
    public static ObservedUnit For(Measure measure, UnitSystem units) =>
        (measure, units == UnitSystem.UnitedStates) switch
        {
            (Measure.MassBefore or Measure.MassAfter, false) => new("g", 0, grams => grams),
            (Measure.MassBefore or Measure.MassAfter, true) => new("oz", 2, grams => Mass.FromGrams(grams).Ounces),
            (Measure.BakeLoss, _) => new("%", 0, percent => percent),
            (Measure.Height or Measure.Diameter or Measure.GuessedHeight, false) => new("mm", 0, millimetres => millimetres),
            (Measure.Height or Measure.Diameter or Measure.GuessedHeight, true) => new("in", 1, millimetres =>
                millimetres / MillimetresPerInch
            ),
            (Measure.InternalTemperature or Measure.MixedTemperature, false) => new("°C", 0, celsius => celsius),
            (Measure.InternalTemperature or Measure.MixedTemperature, true) => new("°F", 0, celsius =>
                Temperature.FromCelsius(celsius).Fahrenheit
            ),
        };
}
