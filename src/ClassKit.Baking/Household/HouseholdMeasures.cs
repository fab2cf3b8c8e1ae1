using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Household;

/// <summary>Turns masses into household measures and back, through the weights of a US cup and teaspoon of each ingredient.</summary>
/// <remarks>
/// Cups count from a quarter cup up, spoons below. Where only one of the two weights is known, the other follows from 48 teaspoons in a
/// cup. A cup of flour depends on how it is filled by more than the rounding here: the error shown is that of the rounding only.
/// </remarks>
public static class HouseholdMeasures
{
    private const double TeaspoonsPerCup = 48;
    private const double TeaspoonsPerTablespoon = 3;

    /// <summary>A cup measure that is within this of the mass needs no spoonful beside it.</summary>
    private const double Close = 0.02;

    /// <summary>
    /// An eighth of a teaspoon that is short by more than a fifth is no measure for salt or powder: a scant one of the next size is nearer
    /// to what is meant. Common practice, no source.
    /// </summary>
    private const double TooLittle = 0.2;

    /// <summary>
    /// The measures nearest to a mass; null if the ingredient has no household weights or the mass is less than half an eighth of a
    /// teaspoon.
    /// </summary>
    /// <param name="ingredient">What is measured.</param>
    /// <param name="mass">Above 0.</param>
    public static HouseholdMeasure? For(Ingredient ingredient, Mass mass)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        if (mass.Grams <= 0)
            return null;
        if (ingredient.Piece is { } piece && (CupOf(ingredient) is null || ingredient.Role == IngredientRole.Egg))
            return Pieces(piece, mass);
        if (CupOf(ingredient) is not { } cup || TeaspoonOf(ingredient) is not { } teaspoon)
            return null;
        return mass.Grams >= cup / 4 && ingredient.GramsPerCup is not null
            ? Cups(cup, mass, ingredient.CupFilling)
            : Spoons(teaspoon, mass);
    }

    /// <summary>The measures to buy for a mass: as <see cref="For"/>, but eggs and the like whole and never too few.</summary>
    /// <param name="ingredient">What is bought.</param>
    /// <param name="mass">Above 0; null otherwise.</param>
    public static HouseholdMeasure? ToBuy(Ingredient ingredient, Mass mass)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient is { Role: IngredientRole.Egg, Piece: { } piece } && mass.Grams > 0
            ? PieceMeasure(piece, Math.Ceiling(mass.Grams / piece.Grams - 1e-9), mass)
            : For(ingredient, mass);
    }

    /// <summary>The mass of a number of US cups; null if the ingredient has no household weights.</summary>
    /// <param name="ingredient">With household weights.</param>
    /// <param name="cups">US cups; not negative, finite.</param>
    public static Mass? OfCups(Ingredient ingredient, double cups)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return CupOf(ingredient) is { } cup ? Mass.FromGrams(cup * cups) : null;
    }

    /// <summary>The mass of a number of US teaspoons; null if the ingredient has no household weights.</summary>
    /// <param name="ingredient">With household weights.</param>
    /// <param name="teaspoons">US teaspoons; not negative, finite.</param>
    public static Mass? OfTeaspoons(Ingredient ingredient, double teaspoons)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return TeaspoonOf(ingredient) is { } teaspoon ? Mass.FromGrams(teaspoon * teaspoons) : null;
    }

    private static double? CupOf(Ingredient ingredient) => ingredient.GramsPerCup ?? ingredient.GramsPerTeaspoon * TeaspoonsPerCup;

    private static double? TeaspoonOf(Ingredient ingredient) => ingredient.GramsPerTeaspoon ?? ingredient.GramsPerCup / TeaspoonsPerCup;

    private static HouseholdMeasure? Pieces(HouseholdPiece piece, Mass mass)
    {
        var count = KitchenFraction.Rounded(mass.Grams / piece.Grams, 4);
        return count > 0 ? PieceMeasure(piece, count, mass) : null;
    }

    private static HouseholdMeasure PieceMeasure(HouseholdPiece piece, double count, Mass mass) =>
        Measure($"{KitchenFraction.Show(count, 4)} {(count > 1 ? piece.Plural : piece.Singular)}", count * piece.Grams, mass);

    private static HouseholdMeasure Cups(double cup, Mass mass, string? filling)
    {
        var nearest = Cups(cup, mass);
        return filling is null ? nearest : nearest with { Text = $"{nearest.Text}, {filling}" };
    }

    private static HouseholdMeasure Cups(double cup, Mass mass)
    {
        var (text, cups) = KitchenFraction.Nearest(mass.Grams / cup, eighths: false);
        var alone = Measure(CupText(text, cups), cups * cup, mass);
        if (Math.Abs(alone.Error) <= Close)
            return alone;

        var quarters = Math.Floor(mass.Grams / cup * 4) / 4;
        var tablespoon = cup * TeaspoonsPerTablespoon / TeaspoonsPerCup;
        var tablespoons = KitchenFraction.Rounded((mass.Grams - quarters * cup) / tablespoon, 2);
        if (tablespoons is 0 or 4)
            return alone;
        var both = Measure(
            $"{CupText(KitchenFraction.Show(quarters, 4), quarters)} + {KitchenFraction.Show(tablespoons, 2)} tbsp",
            quarters * cup + tablespoons * tablespoon,
            mass
        );
        return Math.Abs(both.Error) < Math.Abs(alone.Error) ? both : alone;
    }

    private static HouseholdMeasure? Spoons(double teaspoon, Mass mass)
    {
        var teaspoons = KitchenFraction.Rounded(mass.Grams / teaspoon, mass.Grams < teaspoon ? 8 : 4);
        if (teaspoons <= 0)
            return null;
        if (teaspoons * teaspoon < mass.Grams * (1 - TooLittle))
        {
            var next = teaspoons + 1 / 8.0;
            return Measure($"scant {KitchenFraction.Show(next, 8)} tsp", next * teaspoon, mass);
        }
        var tablespoons = Math.Floor(teaspoons / TeaspoonsPerTablespoon * 2) / 2;
        var rest = teaspoons - tablespoons * TeaspoonsPerTablespoon;
        var text = (tablespoons >= 1, rest) switch
        {
            (false, _) => $"{KitchenFraction.Show(teaspoons, 8)} tsp",
            (true, 0) => $"{KitchenFraction.Show(tablespoons, 2)} tbsp",
            (true, _) => $"{KitchenFraction.Show(tablespoons, 2)} tbsp + {KitchenFraction.Show(rest, 8)} tsp",
        };
        return Measure(text, teaspoons * teaspoon, mass);
    }

    private static HouseholdMeasure Measure(string text, double grams, Mass asked) =>
        new(text, Mass.FromGrams(grams), grams / asked.Grams - 1);

    private static string CupText(string text, double cups) => $"{text} {(cups > 1 ? "cups" : "cup")}";
}
