using ClassKit.Baking.Batches;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Batches;

public sealed class DoughLossTests
{
    [Fact]
    public void Added_losses_ask_for_574_71_lb()
    {
        // Bakery schools' sum, common practice, no source: 500 lb of bread, 2 % handling and 11 % proof, bake and cooling
        Assert.Equal(574.71, DoughLoss.Added(2, 11).DoughFor(Mass.FromPounds(500)).Value.Pounds, 0.005);
    }

    [Fact]
    public void Compounded_losses_ask_for_573_26_lb()
    {
        // The same losses, each on what the one before left: 500 / (0.98 × 0.89), calculated
        Assert.Equal(573.26, DoughLoss.Compounded(2, 11).DoughFor(Mass.FromPounds(500)).Value.Pounds, 0.005);
    }

    [Theory]
    [InlineData(100)]
    [InlineData(120)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_loss_that_leaves_nothing_is_explained(double percent)
    {
        var dough = DoughLoss.Of(percent).DoughFor(Mass.FromGrams(500));
        Assert.Equal("loss-out-of-range", dough.Why!.Code);
    }

    [Fact]
    public void Losses_that_leave_nothing_together_are_explained() =>
        Assert.Equal("loss-out-of-range", DoughLoss.Added(60, 40).DoughFor(Mass.FromGrams(500)).Why!.Code);

    [Fact]
    public void The_same_losses_compounded_leave_something() =>
        Assert.Equal(2083.33, DoughLoss.Compounded(60, 40).DoughFor(Mass.FromGrams(500)).Value.Grams, 0.005); // 500 / (0.4 × 0.6), by hand
}
