using ClassKit.Lessons;

namespace ClassKit.Pages.Packs;

/// <summary>What an allergy means for a bread, in words.</summary>
internal static class AllergyText
{
    /// <summary>Which ingredients hold it and what is published to take instead, each with its source.</summary>
    public static string Of(AllergyImpact impact)
    {
        var offers = string.Join(" ", impact.Offers.Select(offer => offer.Instead is { } instead
            ? $"{offer.Ingredient.Name}: {instead.Instead} ({instead.Source})."
            : $"{offer.Ingredient.Name}: nothing published that fits."));
        var end = impact.CanDoWithout ? "It will be another bread: bake a trial, apart and labelled." : "So it is not offered without.";
        return $"{impact.Card.Formula.Formula.Title} and {impact.Allergen}. {offers} {end}";
    }
}
