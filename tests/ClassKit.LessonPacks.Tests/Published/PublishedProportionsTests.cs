using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;
using static ClassKit.LessonPacks.Tests.Published.PublishedFormula;

namespace ClassKit.LessonPacks.Tests.Published;

/// <summary>
/// No formula of a shipped lesson has a number that a professional would laugh at: each lies among published ones of its kind, or follows a
/// published rule.
/// </summary>
public sealed class PublishedProportionsTests
{
    private static readonly Dictionary<string, PublishedFormula[]> Published = new()
    {
        ["popovers"] =
        [
            new(
                "common practice, by weight: 4 oz flour, 8 oz milk, 4 oz egg, 2 oz butter",
                4,
                (Kind.Liquid, 8),
                (Kind.Egg, 4),
                (Kind.Fat, 2)
            ),
            new(
                "common practice, a recipe in use: 2 cups flour, 1 3/4 cups milk, 3 eggs, 2 tbsp butter",
                2 * FlourCup,
                (Kind.Liquid, 1.75 * MilkCup),
                (Kind.Egg, 3 * EggLarge),
                (Kind.Fat, 2 * ButterSpoon)
            ),
            new(
                "common practice, a recipe in use: 1 1/2 cups flour and milk, 4 eggs, 3 tbsp butter, 3/4 tsp salt",
                1.5 * FlourCup,
                (Kind.Liquid, 1.5 * MilkCup),
                (Kind.Egg, 4 * EggLarge),
                (Kind.Fat, 3 * ButterSpoon),
                (Kind.Salt, 0.75 * SaltTeaspoon)
            ),
            new(
                "common practice, a recipe in use: 3/4 cup flour and milk, 3 eggs",
                0.75 * FlourCup,
                (Kind.Liquid, 0.75 * MilkCup),
                (Kind.Egg, 3 * EggLarge)
            ),
            new(
                "common practice, Popovers: 1 cup flour and milk, 2 eggs, 1/4 tsp salt",
                FlourCup,
                (Kind.Liquid, MilkCup),
                (Kind.Egg, 2 * EggLarge),
                (Kind.Salt, 0.25 * SaltTeaspoon)
            ),
        ],
        ["batter_buns"] =
        [
            new(
                "common practice, no-knead dinner rolls, “a thick muffin batter”: 600 g flour, 250 mL milk, 125 mL water, 2 eggs, 50 g butter, 55 g sugar, 1 tbsp dry yeast, 1 1/2 tsp salt",
                600,
                (Kind.Liquid, Milk(250) + 125),
                (Kind.Egg, 2 * EggLarge),
                (Kind.Fat, 50),
                (Kind.Sugar, 55),
                (Kind.Yeast, 3 * YeastTeaspoon),
                (Kind.Salt, 1.5 * SaltTeaspoon)
            ),
            new(
                "common practice, a recipe in use: 1 lb flour, 1 1/4 cups milk, 2 eggs, 6 tbsp butter, 1/4 cup sugar, 2 1/4 tsp yeast, 1 1/2 tsp salt",
                453.6,
                (Kind.Liquid, 1.25 * MilkCup),
                (Kind.Egg, 2 * EggLarge),
                (Kind.Fat, 6 * ButterSpoon),
                (Kind.Sugar, SugarCup / 4),
                (Kind.Yeast, 2.25 * YeastTeaspoon),
                (Kind.Salt, 1.5 * SaltTeaspoon)
            ),
            new(
                "common practice, soft batch rolls: 625 g flour, 375 mL milk, 100 mL water, 75 g butter, 25 g sugar, 2 tsp yeast",
                625,
                (Kind.Liquid, Milk(375) + 100),
                (Kind.Egg, 0),
                (Kind.Fat, 75),
                (Kind.Sugar, 25),
                (Kind.Yeast, 2 * YeastTeaspoon)
            ),
            new(
                "common practice, the lean end, plain bread: 60 % liquid, 1 % fat, 1 % yeast, 2 % salt",
                100,
                (Kind.Liquid, 60),
                (Kind.Fat, 1),
                (Kind.Yeast, 1),
                (Kind.Salt, 2)
            ),
            new(
                "common practice, a recipe in use: 2 1/2 cups flour, 1 cup milk, 2 eggs, 1/2 stick butter, 1 tsp salt",
                2.5 * FlourCup,
                (Kind.Liquid, MilkCup),
                (Kind.Egg, 2 * EggLarge),
                (Kind.Fat, 4 * ButterSpoon),
                (Kind.Salt, SaltTeaspoon)
            ),
        ],
        ["buttermilk_muffins"] =
        [
            new(
                "Domestic Science School, rule for baking powder mixtures, the least: 2 cups flour, 1 egg, 1 tbsp fat, 1 tbsp sugar, 1/2 tsp salt",
                2 * FlourCup,
                (Kind.Egg, EggLarge),
                (Kind.Fat, ButterSpoon),
                (Kind.Sugar, SugarSpoon),
                (Kind.Salt, 0.5 * SaltTeaspoon)
            ),
            new(
                "the same, the most: 2 eggs, 4 tbsp fat, 4 tbsp sugar",
                2 * FlourCup,
                (Kind.Egg, 2 * EggLarge),
                (Kind.Fat, 4 * ButterSpoon),
                (Kind.Sugar, 4 * SugarSpoon)
            ),
        ],
        ["butter_cakes"] =
        [
            new(
                "common practice, 1-2-3-4 cake of the 1950s: 3 cups flour, 2 cups sugar, 1 cup butter and milk, 4 eggs, 3 tsp powder, 1/2 tsp salt",
                3 * FlourCup,
                (Kind.Liquid, MilkCup),
                (Kind.Egg, 4 * EggLarge),
                (Kind.Fat, ButterCup),
                (Kind.Sugar, 2 * SugarCup),
                (Kind.Powder, 3 * PowderTeaspoon),
                (Kind.Salt, 0.5 * SaltTeaspoon)
            ),
            new(
                "common practice, a recipe in use: 1 7/8 cups cake flour, 1 1/8 cups sugar, 1/2 cup butter, 3/4 cup milk, 2 eggs, 1 tsp powder, 3/4 tsp salt",
                1.875 * CakeFlourCup,
                (Kind.Liquid, 0.75 * MilkCup),
                (Kind.Egg, 2 * EggLarge),
                (Kind.Fat, ButterCup / 2),
                (Kind.Sugar, 1.125 * SugarCup),
                (Kind.Powder, PowderTeaspoon),
                (Kind.Salt, 0.75 * SaltTeaspoon)
            ),
            new(
                "common practice, hurry-up cake: 1 3/4 cups cake flour, 1 cup sugar, 1/2 cup butter and milk, 2 eggs, 2 1/4 tsp powder, 1/2 tsp salt",
                1.75 * CakeFlourCup,
                (Kind.Liquid, MilkCup / 2),
                (Kind.Egg, 2 * EggLarge),
                (Kind.Fat, ButterCup / 2),
                (Kind.Sugar, SugarCup),
                (Kind.Powder, 2.25 * PowderTeaspoon),
                (Kind.Salt, 0.5 * SaltTeaspoon)
            ),
            new(
                "common practice, a recipe in use: 1 3/4 cups flour, 1 cup sugar and milk, 1/2 cup butter, 2 eggs, 3 tsp powder, 1/2 tsp salt",
                1.75 * FlourCup,
                (Kind.Liquid, MilkCup),
                (Kind.Egg, 2 * EggLarge),
                (Kind.Fat, ButterCup / 2),
                (Kind.Sugar, SugarCup),
                (Kind.Powder, 3 * PowderTeaspoon),
                (Kind.Salt, 0.5 * SaltTeaspoon)
            ),
        ],
        ["honey_loaves"] =
        [
            new(
                "common practice, honey pound cake: 1 1/2 cups flour, 1/2 cup honey, sugar, butter and milk, 2 eggs, 1 tsp powder, 1 tsp salt",
                1.5 * FlourCup,
                (Kind.Liquid, MilkCup / 2),
                (Kind.Egg, 2 * EggLarge),
                (Kind.Fat, ButterCup / 2),
                (Kind.Sugar, (HoneyCup + SugarCup) / 2),
                (Kind.Powder, PowderTeaspoon),
                (Kind.Salt, SaltTeaspoon)
            ),
            new(
                "common practice, honey bread: 9 oz self-raising flour, 8 fl oz milk, 2 tbsp honey, 4 oz sugar",
                9 * 28.35,
                (Kind.Liquid, MilkCup),
                (Kind.Sugar, HoneyCup / 8 + 4 * 28.35)
            ),
            new(
                "common practice, honey tea cake loaf: 2 cups flour, 1 cup milk, 1 egg, 1/3 cup oil, 1 cup sugar, 2 tbsp honey, 1 tbsp powder, 1/2 tsp salt",
                2 * FlourCup,
                (Kind.Liquid, MilkCup),
                (Kind.Egg, EggLarge),
                (Kind.Fat, OilCup / 3),
                (Kind.Sugar, SugarCup + HoneyCup / 8),
                (Kind.Powder, 3 * PowderTeaspoon),
                (Kind.Salt, 0.5 * SaltTeaspoon)
            ),
            new(
                "common practice, honey loaf: 1 cup and 3 tbsp flour, 1 egg, 3 tbsp oil, 1/3 cup sugar, 1/2 cup honey",
                1.1875 * FlourCup,
                (Kind.Egg, EggLarge),
                (Kind.Fat, 3 * OilCup / 16),
                (Kind.Sugar, SugarCup / 3 + HoneyCup / 2)
            ),
            new(
                "Domestic Science School, rule for baking powder mixtures, the most: 2 cups flour, 2 eggs, 4 tbsp fat, 4 tbsp sugar",
                2 * FlourCup,
                (Kind.Egg, 2 * EggLarge),
                (Kind.Fat, 4 * ButterSpoon),
                (Kind.Sugar, 4 * SugarSpoon)
            ),
        ],
        ["milk_buns"] =
        [
            new(
                "common practice, a recipe in use: 500 g flour, 250 g water, 25 g sugar, 1 tsp oil",
                500,
                (Kind.Liquid, 250),
                (Kind.Sugar, 25),
                (Kind.Fat, OilCup / 48)
            ),
            new(
                "common practice, a recipe in use: 500 g flour, 300 mL milk, 35 g sugar, 5 g yeast, 1 tbsp oil",
                500,
                (Kind.Liquid, Milk(300)),
                (Kind.Sugar, 35),
                (Kind.Yeast, 5),
                (Kind.Fat, OilCup / 16)
            ),
            new(
                "s91283473.onlinehome.us/taiwanesecooking: 250 g flour, 130 mL milk, 3 g yeast, 30 g sugar",
                250,
                (Kind.Liquid, Milk(130)),
                (Kind.Yeast, 3),
                (Kind.Sugar, 30)
            ),
            new(
                "common practice, a recipe in use: 300 g flour, 3/4 cup milk, 80 g sugar, 2 tsp yeast, 1/4 cup oil",
                300,
                (Kind.Liquid, 0.75 * MilkCup),
                (Kind.Sugar, 80),
                (Kind.Yeast, 2 * YeastTeaspoon),
                (Kind.Fat, OilCup / 4)
            ),
        ],
        ["pan_rounds"] =
        [
            new(
                "common practice, a recipe in use: 250 g flour, 150 mL water, no leavening",
                250,
                (Kind.Liquid, 150),
                (Kind.Yeast, 0),
                (Kind.Powder, 0)
            ),
            new(
                "a maker's manual of a flat pan, phulka: 250 g flour, 210 mL water, 1/2 tsp salt",
                250,
                (Kind.Liquid, 210),
                (Kind.Salt, 0.5 * SaltTeaspoon),
                (Kind.Yeast, 0),
                (Kind.Powder, 0)
            ),
            new("johnnyskitchen.us, How are chapattis made, the driest: 1 kg flour, 650 g water", 1000, (Kind.Liquid, 650)),
            new("the same, the wettest: 750 g water", 1000, (Kind.Liquid, 750)),
            new(
                "common practice, phulkas: 2 1/2 cups whole-wheat flour of 120 g, 1 cup water, 1 tsp salt",
                300,
                (Kind.Liquid, 237),
                (Kind.Salt, SaltTeaspoon)
            ),
        ],
        ["spoon_fritters"] =
        [
            new(
                "A Book of Recipes for the Cooking School, fritter batter: 1 cup flour, 1/3 cup milk, 1 egg, 2 tbsp butter, 1 tsp powder, 1/4 tsp salt",
                FlourCup,
                (Kind.Liquid, MilkCup / 3),
                (Kind.Egg, EggLarge),
                (Kind.Fat, 2 * ButterSpoon),
                (Kind.Powder, PowderTeaspoon),
                (Kind.Salt, SaltTeaspoon / 4)
            ),
            new(
                "common practice, master recipe for fritters: 1 cup flour, 1/4 cup milk, 2 eggs, 2 tbsp sugar, 2 tsp powder, 1/4 tsp salt",
                FlourCup,
                (Kind.Liquid, MilkCup / 4),
                (Kind.Egg, 2 * EggLarge),
                (Kind.Sugar, 2 * SugarSpoon),
                (Kind.Powder, 2 * PowderTeaspoon),
                (Kind.Salt, SaltTeaspoon / 4),
                (Kind.Fat, 0)
            ),
            new(
                "common practice, a recipe in use: 1 1/4 cups flour, 2/3 cup milk, 1 egg, 2 tbsp sugar, 1 tsp powder, 1/4 tsp salt",
                1.25 * FlourCup,
                (Kind.Liquid, 2 * MilkCup / 3),
                (Kind.Egg, EggLarge),
                (Kind.Sugar, 2 * SugarSpoon),
                (Kind.Powder, PowderTeaspoon),
                (Kind.Salt, SaltTeaspoon / 4),
                (Kind.Fat, 0)
            ),
            new(
                "common practice, Mexican fritters: 225 g flour, 120 mL milk, 1 egg, 1 tbsp sugar, 1 tsp powder, 1/2 tsp salt, 25 g butter",
                225,
                (Kind.Liquid, Milk(120)),
                (Kind.Egg, EggLarge),
                (Kind.Sugar, SugarSpoon),
                (Kind.Powder, PowderTeaspoon),
                (Kind.Salt, SaltTeaspoon / 2),
                (Kind.Fat, 25)
            ),
        ],
        ["starter_rolls"] =
        [
            new(
                "common practice, a recipe in use: 500 g flour, 350 g water, 100 g starter of equal parts, 10 g salt",
                550,
                (Kind.Liquid, 400),
                (Kind.Salt, 10),
                (Kind.Fat, 0),
                (Kind.Yeast, 0)
            ),
            new(
                "common practice, a recipe in use: 500 g flour, 375 g water, 100 g starter, 10 g salt",
                550,
                (Kind.Liquid, 425),
                (Kind.Salt, 10),
                (Kind.Yeast, 0)
            ),
            new("common practice, a simple baker's bread formula: 60 % water, 2 % salt", 100, (Kind.Liquid, 60), (Kind.Salt, 2)),
            new(
                "common practice, simple bread rolls: 320 g flour, 225 mL water, 2 tbsp olive oil",
                320,
                (Kind.Liquid, 225),
                (Kind.Fat, OilCup / 8)
            ),
        ],
        ["yeast_rolls"] =
        [
            new(
                "P. Figoni's lean dough: 56 % water, 1.5 % salt, 1.5 % instant yeast",
                100,
                (Kind.Liquid, 56),
                (Kind.Salt, 1.5),
                (Kind.Yeast, 1.5),
                (Kind.Fat, 0)
            ),
            new(
                "common practice, ratios in a basic bread roll: 500 g flour, 10 g instant yeast, 10 g salt, 325 g water, 45 g butter",
                500,
                (Kind.Liquid, 325),
                (Kind.Salt, 10),
                (Kind.Yeast, 10),
                (Kind.Fat, 45)
            ),
            new(
                "common practice, simple bread rolls: 320 g flour, 225 mL water, 7 g dried yeast, 2 tbsp olive oil",
                320,
                (Kind.Liquid, 225),
                (Kind.Yeast, 7),
                (Kind.Fat, OilCup / 8)
            ),
        ],
        ["powder_rolls"] =
        [
            new(
                "common practice, a recipe in use: 3 cups flour, 2 tbsp powder, 1/4 tsp salt, 1/2 cup oil, 1 1/2 cups water",
                3 * FlourCup,
                (Kind.Liquid, 1.5 * 237),
                (Kind.Powder, 6 * PowderTeaspoon),
                (Kind.Salt, SaltTeaspoon / 4),
                (Kind.Fat, OilCup / 2)
            ),
            new(
                "common practice, emergency no yeast bread: 4 cups flour, 2 tsp powder, 1 tsp salt, 1 1/3 cups milk",
                4 * FlourCup,
                (Kind.Liquid, 4 * MilkCup / 3),
                (Kind.Powder, 2 * PowderTeaspoon),
                (Kind.Salt, SaltTeaspoon),
                (Kind.Fat, 0)
            ),
            new(
                "common practice, yogurt biscuits: 2 cups flour, 1 tsp salt, 1 tbsp powder, 2 to 5 tbsp fat",
                2 * FlourCup,
                (Kind.Powder, 3 * PowderTeaspoon),
                (Kind.Salt, SaltTeaspoon),
                (Kind.Fat, OilCup / 8)
            ),
        ],
        ["soda_bread"] =
        [
            new(
                "common practice, a recipe in use: 450 g flour, 400 mL buttermilk, 1 tsp soda, 1 tsp salt",
                450,
                (Kind.Liquid, Milk(400)),
                (Kind.Soda, PowderTeaspoon),
                (Kind.Salt, SaltTeaspoon)
            ),
            new(
                "common practice, a first attempt: 400 g flour, 300 mL buttermilk, 1/2 tsp soda, salt and sugar",
                400,
                (Kind.Liquid, Milk(300)),
                (Kind.Soda, PowderTeaspoon / 2),
                (Kind.Salt, SaltTeaspoon / 2),
                (Kind.Sugar, SugarSpoon / 6)
            ),
            new(
                "common practice, Irish soda bread: 400 g flour, 280 g buttermilk, 12 g soda, 8 g salt",
                400,
                (Kind.Liquid, 280),
                (Kind.Soda, 12),
                (Kind.Salt, 8)
            ),
            new("common practice, Irish soda bread: 340 g flour, 290 mL buttermilk", 340, (Kind.Liquid, Milk(290))),
        ],
    };

    private static readonly Dictionary<string, LessonFormula> Shipped = (
        (string[])["one-tin-three-lifts", "thin-air-quick-breads", "no-oven-in-the-house", "one-dough-three-clocks"]
    )
        .SelectMany(lesson => LessonReader.Read(Path.Combine(Repository.Root, "lessons", lesson)).Model!.Formulas)
        .ToDictionary(formula => formula.Formula.Id);

    public static TheoryData<string> Ids => [.. Published.Keys];

    /// <summary>A starter's water counts as liquid, as its flour counts as flour.</summary>
    private static double Percent(string formula, Kind kind) =>
        Shipped[formula]
            .Formula.Lines.Sum(line =>
                Of(line.Ingredient) == kind ? line.Percent
                : kind == Kind.Liquid && line.Ingredient.StarterOf is not null ? line.Percent * (1 - line.Ingredient.StarterFlourShare)
                : 0
            );

    [Fact]
    public void Every_shipped_formula_is_compared() => Assert.Equal(Shipped.Keys.Order(), Published.Keys.Order());

    [Theory]
    [MemberData(nameof(Ids))]
    public void What_published_formulas_tell_lies_around_ours(string formula)
    {
        var compared = 0;
        foreach (var kind in Enum.GetValues<Kind>())
        {
            var published = Published[formula].Select(source => source.Percent(kind)).OfType<double>().ToList();
            if (published.Count < 2)
                continue;
            Assert.True(
                Percent(formula, kind) >= published.Min() - 0.05 && Percent(formula, kind) <= published.Max() + 0.05,
                $"{formula}: {kind} is {Percent(formula, kind)} %, published are {string.Join(", ", published.Select(percent => $"{percent:0.#} %"))}."
            );
            compared++;
        }

        Assert.InRange(compared, 3, 8);
    }

    /// <summary>
    /// A pour batter has a cup of flour to a cup of liquid, a drop batter two, a soft dough three. Source: British Columbia, Department of
    /// Education, “Flour mixtures”, and M. W. Howard, Lowney's Cook Book (1907), table of proportions: muffins 1 to 2, batters 1 to 1.
    /// </summary>
    [Theory]
    [InlineData("popovers", MilkCup, 1)]
    [InlineData("buttermilk_muffins", 245, 2)]
    public void A_batter_is_as_thick_as_its_kind(string formula, double gramsPerCup, int cupsOfFlour)
    {
        var flourToLiquid = 100 / FlourCup / (Percent(formula, Kind.Liquid) / gramsPerCup);

        Assert.Equal(cupsOfFlour, (int)Math.Round(flourToLiquid, MidpointRounding.AwayFromZero));
    }

    /// <summary>
    /// Half a teaspoon of soda to a cup of sour milk, and in addition a teaspoon of powder to a cup of flour, half a teaspoon less for each
    /// egg: the same table, “Use of leavening agents”, 2 and 3. Two cups of flour with one egg have a teaspoon and a half of powder. To the
    /// nearest quarter of a spoon.
    /// </summary>
    [Fact]
    public void The_muffins_leavening_follows_the_rule_for_sour_milk_with_soda_and_powder()
    {
        Assert.Equal(
            0.5,
            Quarters(Percent("buttermilk_muffins", Kind.Soda) / PowderTeaspoon / (Percent("buttermilk_muffins", Kind.Liquid) / 245))
        );
        Assert.Equal(1.5 / 2, Quarters(Percent("buttermilk_muffins", Kind.Powder) / PowderTeaspoon / (100 / FlourCup)));

        static double Quarters(double spoons) => Math.Round(4 * spoons, MidpointRounding.AwayFromZero) / 4;
    }

    /// <summary>
    /// Soda that no acid meets tastes of soap (our own failure tables). Cultured buttermilk is 0.8 % to 0.9 % lactic acid (common practice,
    /// no source), of which 100 g neutralise 93.3 g of soda (84.006 / 90.078): by hand for 100 g of flour, the least that the acid uses up
    /// is the soda within a tenth of it.
    /// </summary>
    [Theory]
    [InlineData("soda_bread")]
    [InlineData("buttermilk_muffins")]
    public void Buttermilk_uses_up_the_soda_of_a_shipped_formula(string formula)
    {
        var acid = Shipped[formula].Formula.Lines.Where(line => line.Ingredient.Id == "buttermilk").Sum(line => line.Percent);
        var soda = Percent(formula, Kind.Soda);
        Assert.InRange(soda, acid * 0.008 * 84.006 / 90.078 * 0.9, acid * 0.009 * 84.006 / 90.078);
        Assert.True(
            soda - acid * 0.0085 * 84.006 / 90.078 <= 0.1 * soda,
            $"{soda} % of soda, and acid for {acid * 0.0085 * 84.006 / 90.078:0.00} %"
        );
    }

    /// <summary>
    /// Shortened cakes: no more sugar than flour, as much egg as fat; at least as much egg and milk as sugar. Source: “Cake balancing
    /// guidelines” (author and year not known), the last as it has it for cakes with as much sugar as flour or more.
    /// </summary>
    [Fact]
    public void The_butter_cakes_are_balanced()
    {
        Assert.InRange(Percent("butter_cakes", Kind.Sugar), 0, 100);
        Assert.Equal(Percent("butter_cakes", Kind.Fat), Percent("butter_cakes", Kind.Egg));
        Assert.True(Percent("butter_cakes", Kind.Egg) + Percent("butter_cakes", Kind.Liquid) >= Percent("butter_cakes", Kind.Sugar));
    }
}
