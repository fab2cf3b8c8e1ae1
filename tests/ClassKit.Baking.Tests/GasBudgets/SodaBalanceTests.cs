using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.GasBudgets;

/// <summary>
/// Soda that no acid meets. Lactic acid takes 84.006 / 90.078 = 0.9326 g of soda a gram (IUPAC weights), cream of tartar 0.446 (Smith and
/// Hong-Shum, Food Additives Data Book: 2.24 to 1).
/// </summary>
public sealed class SodaBalanceTests
{
    /// <summary>95 g of buttermilk of 0.85 % are 0.8075 g of lactic acid, and meet 0.753 g of soda.</summary>
    [Theory]
    [InlineData(0.8, 0.047, false)]
    [InlineData(1.5, 0.747, true)]
    public void What_buttermilk_leaves_is_told(double soda, double left, bool tasted)
    {
        var balance = Of(("buttermilk", 95), ("baking_soda", soda));

        Assert.Equal(left, balance.Left.Typical.Grams, 0.005);
        Assert.Equal(tasted, balance.IsTasted);
    }

    [Fact]
    public void Without_acid_all_of_it_is_left() =>
        Assert.Equal(
            (1.5, true),
            (Of(("water", 60), ("baking_soda", 1.5)).Left.Low.Grams, Of(("water", 60), ("baking_soda", 1.5)).IsTasted)
        );

    /// <summary>Powder brings its own acid, and 2.24 g of cream of tartar meet a gram.</summary>
    [Fact]
    public void What_is_met_is_not_tasted()
    {
        Assert.False(Of(("water", 60), ("baking_powder", 4)).IsTasted);
        Assert.False(Of(("water", 60), ("baking_soda", 1), ("cream_of_tartar", 2.24)).IsTasted);
    }

    private static SodaBalance Of(params (string Ingredient, double Percent)[] lines)
    {
        var formula = Doughs.Of("dough", Leavening.Chemical, [("ap_flour", 100), .. lines]);
        return SodaBalance.Of(formula, Mass.FromGrams(formula.TotalPercent));
    }
}
