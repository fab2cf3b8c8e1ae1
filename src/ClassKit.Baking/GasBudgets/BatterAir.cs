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
