using System.Text.RegularExpressions;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.BenchSums.Inputs;

/// <summary>An ingredient with its amount, as typed in a line of a formula: a mass or a percentage.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="Mass">How much, if a mass was typed.</param>
/// <param name="Percent">How much, if a percentage was typed.</param>
internal sealed partial record TypedLine(Ingredient Ingredient, Mass? Mass, double? Percent)
{
    /// <summary>
    /// Reads <c>bread flour 100, water 65</c> or <c>500 g bread flour; 325 g water</c>, or says what stands in the way first.
    /// </summary>
    public static Computed<IReadOnlyList<TypedLine>> ReadAll(string text)
    {
        List<TypedLine> lines = [];
        foreach (var entry in text.Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (!Read(entry).TryGet(out var line, out var why))
                return why;
            lines.Add(line);
        }
        return lines.Count == 0
            ? new Impossibility("no-formula", "The formula is empty.", "Write each ingredient with its percentage or mass.")
            : lines.AsReadOnly();
    }

    private static Computed<TypedLine> Read(string entry)
    {
        var match = Shape().Match(entry);
        if (!match.Success)
            return new Impossibility(
                "unreadable-line",
                $"`{entry}` stands in the formula.",
                "Write each ingredient with its percentage or mass: water 65, or water 325 g."
            );
        var amount = match.Groups["amount"].Value;
        return Ingredients
            .Find(match.Groups["name"].Value)
            .Then<TypedLine>(ingredient =>
                MassNotation.TryParse(amount, out var mass) ? new TypedLine(ingredient, mass, null)
                : KitchenFraction.TryParse(amount.TrimEnd('%').TrimEnd(), out var percent) ? new TypedLine(ingredient, null, percent)
                : new Impossibility(
                    "unreadable-amount",
                    $"`{amount}` stands beside {ingredient.Name}.",
                    "Write a percentage or a mass: 65 or 325 g."
                )
            );
    }

    [GeneratedRegex(
        @"^(?:(?<amount>[0-9][0-9 ./]*(?:%|mg|kg|g|lbs?|oz)?)\s+(?<name>\D.*)|(?<name>\D.*?)\s+(?<amount>[0-9][0-9 ./]*\s*(?:%|mg|kg|g|lbs?|oz)?))$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Shape();
}
