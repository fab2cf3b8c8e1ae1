using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.GasBudgets;

/// <summary>The temperature at which a crumb stops stretching: sugar in the water holds starch and egg back, and fat a little.</summary>
/// <remarks>
/// Lean doughs set at 68 °C to 80 °C, cakes from 80 °C on and high-ratio cakes near 100 °C: H. McGee, On Food and Cooking (2004), from
/// memory. A cake batter's starch has swollen in full just below 100 °C ("Cake batters", a chapter on thermal analysis read at second
/// hand). That the delay grows in proportion to the sugar's share of sugar and water, and how much fat adds, is an assumption that meets
/// both ends; the band is as wide as theirs.
/// </remarks>
public static class SettingTemperature
{
    /// <summary>Degrees later for all sugar and no water; a cake with as much sugar as flour has some 0.45 of that.</summary>
    private const double DegreesOfSugar = 42;

    /// <summary>Degrees later for each per cent of fat on the flour.</summary>
    private const double DegreesOfFat = 0.03;

    /// <summary>
    /// Degrees above the boiling point, all of them below it: nearer to it a bubble's own vapour fills it, and no crumb can be said to set later.
    /// </summary>
    private static readonly Band<double> OfBoiling = new(-6, -4, -3);

    /// <summary>The band for a formula, never above what water in that air lets it reach.</summary>
    /// <param name="formula">With flour in it.</param>
    /// <param name="lean">Without sugar and fat.</param>
    /// <param name="pressure">Outside.</param>
    public static Band<Temperature> Of(BakersFormula formula, Band<Temperature> lean, Pressure pressure)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var sugar = Fermentation.SugarPercent(formula);
        var fat = formula.Lines.Where(line => line.Ingredient.Role == IngredientRole.Fat).Sum(line => line.Percent);
        var later = DegreesOfSugar * sugar / Math.Max(sugar + DoughWater.AllWaterPercent(formula), 1) + DegreesOfFat * fat;
        var boiling = Saturation.BoilingPoint(pressure).Celsius;
        return lean.With(OfBoiling, (temperature, above) =>
            Temperature.FromCelsius(Math.Max(temperature.Celsius, Math.Min(temperature.Celsius + later, boiling + above)))
        );
    }
}
