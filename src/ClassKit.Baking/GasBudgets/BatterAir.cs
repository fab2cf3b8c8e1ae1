using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>The air in a batter, from its specific gravity: the mass of a cup of batter over that of a cup of water.</summary>
public static class BatterAir
{
    /// <summary>A creamed cake batter: 0.80 for layer cakes with shortening to 0.90 for pound and cream cakes.</summary>
    /// <remarks>"Measuring specific gravity for cakes", Bake magazine, article 11566.</remarks>
    public static Band<double> CreamedSpecificGravity { get; } = new(0.80, 0.85, 0.90);

    /// <summary>
    /// An egg foam with flour folded in: 0.46 to 0.48 for sponges, 0.50 for a génoise or chiffon cake, 0.30 for angel food.
    /// </summary>
    /// <remarks>
    /// Baking Business, Bakers Dictionary, "Sponge cake"; Bake magazine, article 11566, which has 0.30 for angel food: whoever bakes one
    /// writes it down.
    /// </remarks>
    public static Band<double> FoamSpecificGravity { get; } = new(0.45, 0.48, 0.52);

    /// <summary>
    /// How far a batter may lie from what was written down, either way: a cup is filled and struck off to within this. From memory.
    /// </summary>
    private const double MeasuringError = 0.03;

    /// <summary>A specific gravity that an author has written down, with what measuring it leaves open.</summary>
    /// <param name="measured">Above 0.</param>
    public static Band<double> Around(double measured) => new(Math.Max(0, measured - MeasuringError), measured, measured + MeasuringError);

    /// <summary>The share of air in the volume of a batter; the lighter it is, the more.</summary>
    /// <param name="formula">With flour in it.</param>
    /// <param name="specificGravity">Above 0, below the density of the batter without gas.</param>
    public static Band<double> ShareOf(BakersFormula formula, Band<double> specificGravity)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var dough = Mass.FromGrams(formula.TotalPercent);
        var density = dough.Grams / DoughVolume.GasFree(formula, dough).Millilitres;
        return new(Air(specificGravity.High), Air(specificGravity.Typical), Air(specificGravity.Low));

        double Air(double gravity) => Math.Clamp(1 - gravity / density, 0, 0.9);
    }
}
