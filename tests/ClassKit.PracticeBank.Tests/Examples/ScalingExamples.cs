using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.Examples;

/// <summary>Published worked examples of scaling and yield, put in as givens.</summary>
public sealed class ScalingExamples
{
    [Fact]
    public void Seventy_three_pieces_take_the_flour_and_water_of_the_worksheet()
    {
        // College worksheet "Baker's Percentage Worksheet", author and year not known: 73 × 390 g at 100/67/2/1.
        var answers = ShippedBank.Work(
            "tray_of_rolls",
            ("pieces", 73),
            ("piece", 390),
            ("milk_percent", 0.67),
            ("salt_percent", 0.02),
            ("yeast_percent", 0.01)
        );

        Assert.Equal(28_470, answers["dough"], 1e-9);
        Assert.Equal(1.70, answers["total_percent"], 1e-9);
        Assert.Equal(16_747.06, answers["flour"], 0.01);
        Assert.Equal(11_220.53, answers["milk"], 0.01);
    }

    [Theory]
    // common practice, no source: 1.340 kg at 182 %, published as 736 g.
    [InlineData(1340, 0.82, 736)]
    // a tutorial's sum, common practice: 1400 g at 173.5 %, published as 807 g.
    [InlineData(1400, 0.735, 807)]
    public void A_dough_at_its_total_percentage_gives_the_published_flour(double dough, double others, double flour) =>
        Assert.Equal(flour, ShippedBank.Work("tray_of_rolls", ("pieces", 1), ("piece", dough), ("milk_percent", others))["flour"], 0.5);

    [Theory]
    // Armed Forces Recipe Service, General Information A-1: cards for 100 portions.
    [InlineData(100, 1, 348, 1, 1.25, 3.48, 4.35)]
    [InlineData(100, 4, 348, 3, 1, 2.61, 2.61)]
    // Kendall College, "Recipe conversions": 5 × 8 oz to 10 × 4 oz is the same yield.
    [InlineData(5, 8, 10, 4, 12, 1, 12)]
    public void Factors_come_from_total_yields(
        double portions,
        double size,
        double wanted,
        double wantedSize,
        double onCard,
        double factor,
        double amount
    )
    {
        var answers = ShippedBank.Work(
            "bigger_portions",
            ("portions", portions),
            ("size", size),
            ("wanted", wanted),
            ("wanted_size", wantedSize),
            ("card_flour", onCard)
        );

        Assert.Equal(factor, answers["factor"], 1e-9);
        Assert.Equal(amount, answers["flour"], 1e-9);
    }

    [Fact]
    public void A_loss_is_divided_out()
    {
        // Bakery schools' sum, common practice, no source: 500 lb of bread, 13 % lost in all; 500/0.87 and 500/(0.98 × 0.89) are
        // calculated.
        Assert.Equal(574.71, ShippedBank.Work("loaf_for_the_shelf", ("baked", 500), ("loaves", 1), ("bake_loss", 0.13))["dough"], 0.01);
        Assert.Equal(
            573.26,
            ShippedBank.Work("loaf_for_the_shelf", ("baked", 500), ("loaves", 1), ("bake_loss", 0.11), ("bowl_loss", 0.02))["dough"],
            0.01
        );
    }

    [Fact]
    public void The_ingredient_that_is_short_sets_flour_and_dough()
    {
        // a tutorial's sum, common practice: 50 g of milk at 10 %, total 163 %, give 500 g of flour and 815 g of dough.
        var answers = ShippedBank.Work(
            "last_of_the_butter",
            ("butter", 50),
            ("butter_percent", 0.10),
            ("total_percent", 1.63),
            ("piece", 100)
        );

        Assert.Equal(500, answers["flour"], 1e-9);
        Assert.Equal(815, answers["dough"], 1e-9);
        Assert.Equal(8, answers["buns"]);
    }

    [Fact]
    public void What_is_on_hand_over_what_the_card_takes_is_the_factor()
    {
        // Armed Forces Recipe Service, General Information A-1: 102 lb on hand, 30 lb for 100 portions, factor 3.40.
        Assert.Equal(
            3.40,
            ShippedBank.Work("last_of_the_butter", ("butter", 102), ("butter_percent", 30), ("total_percent", 1), ("piece", 1))["flour"],
            1e-9
        );
    }

    [Fact]
    public void A_textbook_yield_gives_the_flour_of_one_batch()
    {
        // johnnyskitchen.us, "Procedure for converting a formula to a new yield": 3000 g at 377.5 % is 794.7 g of flour.
        var answers = ShippedBank.Work("mixer_batches", ("pieces", 30), ("piece", 100), ("bowl", 5), ("total_percent", 3.775));

        Assert.Equal(1, answers["batches"]);
        Assert.Equal(794.7, answers["flour"], 0.05);
    }

    [Fact]
    public void Seeds_that_find_no_room_are_the_loaf()
    {
        // AACC Approved Method 10-05.01 defines it so; a pound of dough that bakes to 14 oz loses an eighth. By hand.
        var answers = ShippedBank.Work("loaf_by_displacement", ("dough", 16), ("loaf", 14), ("box", 100), ("around", 44));

        Assert.Equal(4, answers["lightness"], 1e-12);
        Assert.Equal(0.125, answers["bake_loss"], 1e-12);
    }

    [Fact]
    public void Losses_of_two_days_are_compounded_and_portions_rounded_down()
    {
        // By hand: 1000 g keep 970 g and 940.9 g; without a tenth of heels 846.81 g, which is eight portions of 100 g.
        var answers = ShippedBank.Work(
            "day_old_portions",
            ("loaf", 1000),
            ("drying", 0.03),
            ("days", 2),
            ("heels", 0.1),
            ("portion", 100),
            ("loaves", 1)
        );

        Assert.Equal(846.81, answers["bread"], 1e-9);
        Assert.Equal(8, answers["portions"]);
        Assert.Equal(94.09, answers["crumbs"], 1e-9);
    }

    [Fact]
    public void A_published_working_factor_is_found_backwards()
    {
        // Armed Forces Recipe Service, General Information A-1: the factor is servings wanted over the 100 of the card, 348 servings take
        // 3.48.
        var answers = ShippedBank.Work(
            "the_wrong_factor",
            ("card_dough", 100),
            ("card_flour", 60),
            ("wanted", 348),
            ("piece", 1),
            ("found", 248)
        );

        Assert.Equal(3.48, answers["right"], 1e-12);
        Assert.Equal(60, answers["flour"], 1e-9);
    }
}
