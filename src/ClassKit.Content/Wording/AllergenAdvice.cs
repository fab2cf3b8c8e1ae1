using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Content.Wording;

/// <summary>What to write in the place of an allergen that nobody here knows.</summary>
internal static class AllergenAdvice
{
    /// <summary>
    /// How many letters of a word are mistyped at most, of which one is: whoever follows a guess writes down another allergy, so that only
    /// a slip of the hand is guessed at.
    /// </summary>
    private const int LettersPerSlip = 4;

    private const int MostFoods = 3;

    /// <summary>The words that it was most likely meant to be, what a food of that name holds, or all that are known.</summary>
    /// <param name="typed">What stands there.</param>
    /// <param name="pantry">The foods that a formula can name.</param>
    public static string For(string typed, Pantry pantry) => Foods(typed, pantry) is { Count: > 0 } foods ? OfFoods(foods) : For(typed);

    /// <summary>The words that it was most likely meant to be, or all that are known.</summary>
    public static string For(string typed) =>
        Near(typed) is { Count: > 0 } near
            ? $"Did you mean {string.Join(" or ", near.Select(word => $"`{word}`"))}?"
            : $"Known are what EU and US law make a label declare: {string.Join(", ", AllergenCatalog.All.Select(allergen => allergen.Name))}, and everyday words for them. "
                + "Anything else ClassKit cannot look for: leave it out here, and read every label for it yourself.";

    /// <summary>Foods with every typed word in their names: the apricot jam of jam.</summary>
    private static List<Ingredient> Foods(string typed, Pantry pantry)
    {
        var words = NearestName.Words(typed);
        return words.Count == 0 ? [] : [.. pantry.All.Where(food => words.TrueForAll(NearestName.Words(food.Name).Contains))];
    }

    private static string OfFoods(List<Ingredient> foods)
    {
        List<string> held = [.. foods.SelectMany(food => food.Allergens).Select(allergen => allergen.Name).Distinct()];
        List<string> perhaps =
        [
            .. foods
                .SelectMany(food => food.Doubts)
                .SelectMany(doubt => doubt.Maybe)
                .Select(allergen => allergen.Name)
                .Except(held)
                .Distinct(),
        ];
        return $"It is a food here ({string.Join(", ", foods.Take(MostFoods).Select(food => food.Name))}{(foods.Count > MostFoods ? " and more" : "")}), and ClassKit looks for what must be declared in a food: of these "
            + (held.Count == 0 ? "nothing" : string.Join(", ", held))
            + (perhaps.Count == 0 ? "" : $", by their labels perhaps {string.Join(", ", perhaps)}")
            + ". Write that if it is meant; for the food itself leave it out, and see from the cards which bread holds it.";
    }

    private static IReadOnlyList<string> Near(string typed) =>
        NearestWord.AllTo(
            typed,
            AllergenWords
                .All.Select(word => word.Word)
                .Where(word =>
                    EditDistance.Between(typed.ToLowerInvariant(), word.ToLowerInvariant()) <= Math.Max(1, typed.Length / LettersPerSlip)
                ),
            3
        );
}
