using ClassKit.Baking.Allergens;

namespace ClassKit.Baking.Tests.Allergens;

public sealed class AllergenCatalogTests
{
    // Regulation (EU) 1169/2011, Annex II, 1 and 8
    private static readonly string[] Cereals = ["wheat", "spelt", "khorasan wheat", "rye", "barley", "oats"];
    private static readonly string[] EuropeanNuts =
    [
        "almond",
        "hazelnut",
        "walnut",
        "cashew",
        "pecan",
        "Brazil nut",
        "pistachio",
        "macadamia nut",
    ];

    // FD&C Act 201(qq) with the FASTER Act of 2021
    private static readonly string[] AmericanNine =
    [
        "milk",
        "egg",
        "fish",
        "crustacean shellfish",
        "tree nuts",
        "wheat",
        "peanuts",
        "soybeans",
        "sesame",
    ];

    // FDA, Questions and Answers Regarding Food Allergens, edition 5 (2025), table 1: twelve kinds, four of them walnuts
    private static readonly string[] AmericanNuts =
    [
        "almond",
        "Brazil nut",
        "cashew",
        "hazelnut",
        "macadamia nut",
        "pecan",
        "pine nut",
        "pistachio",
        "walnut",
    ];

    [Fact]
    public void The_european_list_has_fourteen_groups_each_with_something_in_it()
    {
        Assert.Equal(14, Enum.GetValues<AllergenGroup>().Length);
        Assert.All(Enum.GetValues<AllergenGroup>(), group => Assert.Contains(AllergenCatalog.Of(group), allergen => allergen.IsEuropean));
    }

    [Fact]
    public void Cereals_and_nuts_are_there_by_name()
    {
        Assert.Equal(Cereals, AllergenCatalog.Of(AllergenGroup.GlutenCereals).Select(allergen => allergen.Name));
        Assert.Equal(
            EuropeanNuts.Order(StringComparer.Ordinal),
            AllergenCatalog
                .Of(AllergenGroup.Nuts)
                .Where(allergen => allergen.IsEuropean)
                .Select(allergen => allergen.Name)
                .Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            AmericanNuts,
            AllergenCatalog
                .Of(AllergenGroup.Nuts)
                .Where(allergen => allergen.UnitedStatesTerm is not null)
                .Select(allergen => allergen.Name)
                .Order(StringComparer.OrdinalIgnoreCase)
        );
    }

    [Fact]
    public void The_us_list_has_nine_foods() =>
        Assert.Equal(
            AmericanNine.Order(StringComparer.Ordinal),
            AllergenCatalog.All.Select(allergen => allergen.UnitedStatesTerm).OfType<string>().Distinct().Order(StringComparer.Ordinal)
        );

    [Fact]
    public void What_only_europe_declares_is_on_no_us_list() =>
        Assert.Equal(
            ["barley", "celery", "lupin", "molluscs", "mustard", "oats", "rye", "sulphites"],
            AllergenCatalog
                .All.Where(allergen => allergen.UnitedStatesTerm is null)
                .Select(allergen => allergen.Name)
                .Order(StringComparer.Ordinal)
        );
}
