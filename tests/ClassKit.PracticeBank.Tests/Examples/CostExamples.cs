using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.Examples;

/// <summary>Published worked examples of yield and cost, put in as givens.</summary>
public sealed class CostExamples
{
    [Theory]
    // "Yield tests", teaching slides, common practice: 38.00 dollars for 24 lb, 42.00 for 36 lb.
    [InlineData(38, 24, 1.58)]
    [InlineData(42, 36, 1.17)]
    public void A_price_and_a_weight_give_the_unit_price(double price, double weight, double unit) =>
        Assert.Equal(
            unit,
            ShippedBank.Work("flour_in_a_loaf", ("sack", weight), ("sack_price", price), ("flour", 1000), ("loaves", 1), ("all_cost", 1))[
                "kilo"
            ],
            0.005
        );

    [Fact]
    public void A_yield_test_gives_the_published_share_and_price()
    {
        // G. Wall, Trade Calculations, objective 4: 5.2 kg leave 4.6 kg, 88.5 %; 11.95 a kg becomes 13.51 from the weights; 14.45 kg of
        // portions take 16.33 kg.
        var answers = ShippedBank.Work("peeled_apples", ("bought", 5.2), ("used", 4.6), ("price", 11.95), ("need", 14.45));

        Assert.Equal(88.46, answers["yield"] * 100, 0.01);
        Assert.Equal(13.51, answers["peeled_price"], 0.005);
        Assert.Equal(16.33, answers["buy"], 0.01);
    }

    [Theory]
    // BC Cook Articulation Committee, Basic Kitchen and Food Service Management, "Yield Testing": carrots; what is left of tenderloin and
    // salmon is from memory.
    [InlineData(1, 0.8, 80)]
    [InlineData(2.5, 1.75, 70)]
    [InlineData(7.75, 5, 64.5)]
    // "Yield tests", teaching slides, common practice: 22 of 24, printed 91.7 %.
    [InlineData(24, 22, 91.7)]
    // The same slides: 24 of 36, printed 66.6 %, which is cut off; rounded it is 66.7 %.
    [InlineData(36, 24, 66.7)]
    public void What_is_left_is_the_yield(double bought, double used, double percent) =>
        Assert.Equal(percent, ShippedBank.Work("peeled_apples", ("bought", bought), ("used", used))["yield"] * 100, 0.05);

    [Fact]
    public void Trimmed_onions_cost_what_was_bought()
    {
        // johnnyskitchen.us, "Yield cost analysis": 2 lb sliced take 2.25 lb as purchased at 0.24, 0.54 and not 0.48.
        var answers = ShippedBank.Work("peeled_apples", ("bought", 2.25), ("used", 2), ("price", 0.24), ("need", 2));

        Assert.Equal(2.25, answers["buy"], 1e-9);
        Assert.Equal(0.54, answers["peeled_price"] * 2, 1e-9);
    }

    [Fact]
    public void Three_pounds_at_the_published_yield_take_two_packs_of_two()
    {
        // "Yield tests", teaching slides, common practice: 3 lb of edible portion at a yield of 0.917 are 3.27 lb to order.
        var answers = ShippedBank.Work("order_for_saturday", ("need", 3), ("trim", 1 - 0.917), ("pack", 2), ("pack_price", 5));

        Assert.Equal(3.27, answers["unwrap"], 0.005);
        Assert.Equal(2, answers["packs"]);
        Assert.Equal(10, answers["cost"]);
    }

    [Fact]
    public void A_price_is_the_food_divided_by_its_share()
    {
        // The definition; common practice, no published example found. A quarter of the price is food, so the price is four times the food.
        var bun = ShippedBank.Work("price_of_a_bun", ("buns", 10), ("batch_cost", 5), ("target", 0.25), ("menu", 2));
        var stall = ShippedBank.Work("market_stall", ("rolls", 10), ("batch_cost", 4), ("target", 0.25), ("unsold", 0.2));

        Assert.Equal(2, bun["price"], 1e-12);
        Assert.Equal(0.25, bun["menu_share"], 1e-12);
        Assert.Equal(2, stall["price"], 1e-12);
    }
}
