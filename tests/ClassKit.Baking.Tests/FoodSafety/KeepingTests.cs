using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Tests.FoodSafety;

/// <summary>
/// What is kept cold until it is used: FDA Food Code 1-201.10(B), food under time and temperature control for safety: animal food, raw or
/// heat-treated; plant food that is heat-treated; cut leafy greens.
/// </summary>
public sealed class KeepingTests
{
    /// <summary>Liquids that stand in a kitchen: acid or spirits, or brewed and poured hot (common practice, no source).</summary>
    private static readonly string[] Stand =
    [
        "water",
        "coffee",
        "espresso",
        "black_tea",
        "orange_juice",
        "lemon_juice",
        "lime_juice",
        "cider_vinegar",
        "white_vinegar",
        "wine_vinegar",
        "rum",
        "red_wine",
        "beer",
    ];

    [Fact]
    public void Every_liquid_is_kept_cold_but_those_named_here() =>
        Assert.Equal(
            Stand.Order(),
            IngredientCatalog
                .All.Where(ingredient => ingredient.Role == IngredientRole.Liquid && !ingredient.IsKeptCold())
                .Select(ingredient => ingredient.Id)
                .Order()
        );

    [Theory]
    [InlineData("pumpkin_puree", true)]
    [InlineData("spinach", true)]
    [InlineData("cream_cheese", true)]
    [InlineData("unsalted_butter", true)]
    [InlineData("margarine", true)]
    [InlineData("whole_egg", true)]
    [InlineData("fresh_yeast", true)]
    [InlineData("instant_yeast", false)]
    [InlineData("dry_whole_milk", false)]
    [InlineData("dried_egg", false)]
    [InlineData("white_chocolate", false)]
    [InlineData("semisweet_chocolate", false)]
    [InlineData("shortening", false)]
    [InlineData("white_rice", false)]
    [InlineData("potato", false)]
    public void What_is_moist_and_of_animals_is_and_of_plants_what_says_so(string id, bool isCold) =>
        Assert.Equal(isCold, IngredientCatalog.Get(id).IsKeptCold());

    /// <summary>The author's word first, and what may hold milk is kept as what holds it.</summary>
    [Theory]
    [InlineData("", "", "", false)]
    [InlineData("", "", "yes", true)]
    [InlineData("milk", "", "", true)]
    [InlineData("milk", "", "No", false)]
    [InlineData("egg", "", "", true)]
    [InlineData("", "shortening", "", true)]
    [InlineData("", "thickened", "", false)]
    public void A_row_of_ones_own_says_so_or_it_follows_from_what_it_may_hold(string allergens, string label, string cold, bool isCold)
    {
        var (ingredient, faults) = Row(allergens, label, cold);

        Assert.Empty(faults);
        Assert.Equal(isCold, ingredient!.IsKeptCold());
    }

    [Fact]
    public void Anything_else_than_yes_or_no_is_refused() =>
        Assert.Equal(new IngredientFault("cold", "4 °C", IngredientFaultKind.NoAnswer), Assert.Single(Row("", "", "4 °C").Faults));

    private static (Ingredient? Ingredient, IReadOnlyList<IngredientFault> Faults) Row(string allergens, string label, string cold) =>
        IngredientRow.Read(column =>
            column switch
            {
                "name" => "Cooked rice",
                "kind" => "other",
                "water" => "70",
                "source" => "invented for this test",
                "allergens" => allergens,
                "label" => label,
                "cold" => cold,
                _ => "",
            }
        );
}
