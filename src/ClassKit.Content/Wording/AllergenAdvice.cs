using ClassKit.Baking.Allergens;

namespace ClassKit.Content.Wording;

/// <summary>What to write in the place of an allergen that nobody here knows.</summary>
internal static class AllergenAdvice
{
    /// <summary>
    /// How many letters of a word are mistyped at most, of which one is: whoever follows a guess writes down another allergy, so that only
    /// a slip of the hand is guessed at.
    /// </summary>
    private const int LettersPerSlip = 4;

    /// <summary>The words that it was most likely meant to be, or all that are known.</summary>
    public static string For(string typed) =>
        Near(typed) is { Count: > 0 } near
            ? $"Did you mean {string.Join(" or ", near.Select(word => $"`{word}`"))}?"
            : $"Known are what EU and US law make a label declare: {string.Join(", ", AllergenCatalog.All.Select(allergen => allergen.Name))}, and everyday words for them. "
                + "Anything else ClassKit cannot look for: leave it out here, and read every label for it yourself.";

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
