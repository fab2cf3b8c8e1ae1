using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Pages.Numbers;

/// <summary>What a mix comes to, in words that are the same on every page.</summary>
internal static class MixText
{
    /// <summary>"27 °C (81 °F)": what to aim at.</summary>
    public static string Aim(MixBalance mix, UnitSystem units) => KitchenText.Temperature(mix.Mixed.Typical, units);

    /// <summary>"25 °C (77 °F) to 29 °C (84 °F)": what a probe may show.</summary>
    public static string Right(MixBalance mix, UnitSystem units) =>
        $"{KitchenText.Temperature(mix.Mixed.Low, units)} to {KitchenText.Temperature(mix.Mixed.High, units)}";

    /// <summary>"whole milk and unsalted butter at 33 °C (91 °F)"; empty where nothing is warmed.</summary>
    public static string Warmed(MixBalance mix, UnitSystem units) =>
        mix.Warmed.Count == 0 ? "" : $"{Names(mix.Warmed)} at {KitchenText.Temperature(mix.Warmed[0].Temperature, units)}";

    /// <summary>"water, unsalted butter and bread flour at 60 °C (140 °F)"; empty where no paste is cooked.</summary>
    public static string Cooked(MixBalance mix, UnitSystem units) =>
        mix.Of(HeatKind.Cooked) is { Count: > 0 } parts ? $"{Names(parts)} at {KitchenText.Temperature(parts[0].Temperature, units)}" : "";

    /// <summary>"water at 100 °C (212 °F)"; empty where nothing goes in boiling.</summary>
    public static string Boiling(MixBalance mix, UnitSystem units) =>
        mix.Of(HeatKind.Boiled) is { Count: > 0 } parts ? $"{Names(parts)} at {KitchenText.Temperature(parts[0].Temperature, units)}" : "";

    /// <summary>"whole egg"; empty where nothing comes straight from the refrigerator.</summary>
    public static string Cold(MixBalance mix) => Names(mix.Of(HeatKind.Cold));

    /// <summary>"unsalted butter 60 min before"; empty where nothing stands out.</summary>
    public static string Tempered(MixBalance mix) =>
        mix.Of(HeatKind.Tempered) is { Count: > 0 } parts
            ? $"{Names(parts)} {NumberText.WithUnit($"{MixSettings.Default.TemperMinutes}", "min")} before"
            : "";

    /// <summary>Every bread as written, and of its series those whose mix comes to something else: what is alike is said once.</summary>
    public static IReadOnlyList<FormulaCard> Different(IReadOnlyList<FormulaCard> cards, UnitSystem units)
    {
        return
        [
            .. cards.Where(card =>
                card.Bread.Place is not { IsAsWritten: false } place
                || Of(card) != Of(cards.First(other => other.Bread.Formula.Id == place.OfId))
            ),
        ];

        string Of(FormulaCard card) =>
            string.Join(';', Aim(card.Mix, units), Right(card.Mix, units), Warmed(card.Mix, units), Cold(card.Mix), Tempered(card.Mix));
    }

    private static string Names(IReadOnlyList<MixPart> parts) => Phrases.List([.. parts.Select(Name)]);

    /// <summary>"water", or "40 % of the water" and "the rest of the water" where that goes in otherwise.</summary>
    private static string Name(MixPart part)
    {
        var name = part.Ingredient.Name.ToLowerInvariant();
        return part.IsRest ? $"the rest of the {name}"
            : part.Share < 1 ? $"{NumberText.WithUnit(NumberText.AtMost(PerHundred.Of(part.Share), 0), "%")} of the {name}"
            : name;
    }
}
