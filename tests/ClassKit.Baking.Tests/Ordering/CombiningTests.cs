using ClassKit.Baking.Batches;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.Baking.Tests.Ordering;

public sealed class CombiningTests
{
    [Fact]
    public void Flour_over_three_batches_is_ordered_once()
    {
        Batch[] batches =
        [
            .. new[] { Doughs.Buns, Doughs.Muffins, Doughs.Popovers }.Select(formula =>
                Scaling.FromDough(formula, Mass.FromGrams(1000), Scales.Common).Value
            ),
        ];
        var order = Combining.Batches(batches);

        Assert.Equal(
            batches.Sum(batch => batch.Lines[0].Weighed.Grams),
            order.Single(line => line.Ingredient.Id == "ap_flour").Mass.Grams,
            1e-9
        );
        Assert.Equal(batches.Sum(batch => batch.Weighed.Grams), order.Sum(line => line.Mass.Grams), 1e-6);
    }
}
