using ClassKit.Baking.Batches;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.Baking.Tests.Batches;

public sealed class ImpossibleBatchTests
{
    private static readonly Mass Some = Mass.FromGrams(500);

    [Fact]
    public void Without_flour_there_is_no_hundred_percent()
    {
        var formula = Doughs.Of("custard", Leavening.Steam, ("whole_milk", 100), ("whole_egg", 50));
        Assert.Equal("no-flour", Scaling.FromDough(formula, Some, Scales.Common).Why!.Code);
    }

    [Fact]
    public void An_empty_formula_has_no_flour() =>
        Assert.Equal("no-flour", Scaling.FromDough(Doughs.Of("nothing", Leavening.Steam), Some, Scales.Common).Why!.Code);

    [Fact]
    public void Flours_must_sum_to_the_hundred_percent()
    {
        var formula = Doughs.Of("mixed", Leavening.Yeast, ("bread_flour", 80), ("whole_wheat_flour", 30), ("water", 65));
        Assert.Equal(
            "The flours of mixed add up to 110 %. All flour together is 100 %: divide every percentage by the flours' sum.",
            Scaling.FromFlour(formula, Some, Scales.Common).Why!.ToString()
        );
    }

    [Fact]
    public void Hydration_beyond_sense_is_explained() =>
        Assert.Equal(
            "not-a-dough",
            Scaling.FromFlour(Doughs.Of("soup", Leavening.Steam, ("bread_flour", 100), ("water", 670)), Some, Scales.Common).Why!.Code
        );

    [Fact]
    public void A_negative_percentage_is_explained() =>
        Assert.Equal(
            "bad-percentage",
            Scaling.FromFlour(Doughs.Of("odd", Leavening.Yeast, ("bread_flour", 100), ("water", -5)), Some, Scales.Common).Why!.Code
        );

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void No_pieces_are_explained(int pieces) =>
        Assert.Equal("no-pieces", Scaling.FromPieces(Doughs.Worksheet, pieces, Some, DoughLoss.None, Scales.Common).Why!.Code);

    [Fact]
    public void Nothing_scales_from_nothing() =>
        Assert.Equal("nothing-to-scale-from", Scaling.FromDough(Doughs.Worksheet, default, Scales.Common).Why!.Code);

    [Fact]
    public void A_piece_has_a_mass() =>
        Assert.Equal("no-piece-mass", Scaling.FromPieces(Doughs.Worksheet, 3, default, DoughLoss.None, Scales.Common).Why!.Code);

    [Fact]
    public void Grams_taken_for_kilograms_are_noticed() =>
        Assert.Equal("too-much", Scaling.FromDough(Doughs.Worksheet, Mass.FromKilograms(28_470_000), Scales.Common).Why!.Code);

    [Fact]
    public void An_ingredient_that_is_not_there_limits_nothing() =>
        Assert.Equal(
            "not-in-formula",
            Scaling.FromIngredient(Doughs.Worksheet, IngredientCatalog.Get("honey"), Some, Scales.Common).Why!.Code
        );

    [Fact]
    public void A_scale_has_a_division() =>
        Assert.Equal("bad-scales", Scaling.FromDough(Doughs.Worksheet, Some, Scales.One(default)).Why!.Code);
}
