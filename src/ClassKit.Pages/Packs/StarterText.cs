using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Stations;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Packs;

/// <summary>A starter in words.</summary>
internal static class StarterText
{
    /// <summary>"the day before at 20:10, 14 h before it is weighed at 10:10"; without a plan the hours alone.</summary>
    public static string When(StarterMix mix, ClassStart? start)
    {
        var hours = NumberText.WithUnit(NumberText.AtMost(mix.Build.Hours, 1), "h");
        return mix is not { Mixed: { } mixed, Weighed: { } weighed } ? $"{hours} before it is weighed"
            : start is null ? $"{hours} before it is weighed at {KitchenText.Clock(weighed)}"
            : $"{Day(mixed, start)} at {KitchenText.TimeOfDay(mixed, start)}, {hours} before it is weighed at {KitchenText.TimeOfDay(weighed, start)}";
    }

    /// <summary>"135 g of ripe rye sourdough starter, 1.32 kg of rye flour and 1.32 kg of water".</summary>
    public static string Parts(IReadOnlyList<(Ingredient Ingredient, Mass Mass)> parts, ClassProfile profile) =>
        Phrases.List([
            .. parts.Select(part =>
                $"{KitchenText.Ordered(part.Mass, profile)} of {(part.Ingredient.StarterOf is null ? "" : "ripe ")}{part.Ingredient.Name.ToLowerInvariant()}"
            ),
        ]);

    /// <summary>What is mixed when for all teams together, and how warm it stands.</summary>
    public static string Sentence(StarterMix mix, ClassProfile profile) =>
        $"Starter of the {mix.Card.Bread.Formula.Title.ToLowerInvariant()}{Stage(mix)}, mixed {When(mix, profile.Start)}, at {KitchenText.Temperature(mix.Build.Temperature, profile.Units)}: {Parts(mix.InAll, profile)}{(mix.Card.Loads > 1 ? $" for {Phrases.Count(mix.Card.Loads, "team")}" : "")}.";

    /// <summary>", stage 1 of 2"; empty where there is one.</summary>
    public static string Stage(StarterMix mix) => mix.Stages == 1 ? "" : $", stage {mix.Stage} of {mix.Stages}";

    /// <summary>"Built 14 h before, at 24 °C: 47 g of ripe …", stage by stage.</summary>
    public static string Built(FormulaCard card, ClassProfile profile) =>
        string.Join(
            " ",
            card.Lines.SelectMany(line => card.StagesOf(line.Line))
                .Select(
                    (stage, at) =>
                        $"{(at == 0 ? "Built" : "Then")} {NumberText.WithUnit(NumberText.AtMost(stage.HoursBefore, 1), "h")} before, at {KitchenText.Temperature(stage.Build.Temperature, profile.Units)}: {Parts(stage.Parts, profile)}."
                )
        );

    private static string Day(int minute, ClassStart start) =>
        (int)Math.Floor((start.At.Hour * 60 + start.At.Minute + minute) / 1440.0) switch
        {
            0 => "the same day",
            -1 => "the day before",
            var days => $"{-days} days before",
        };

    /// <summary>
    /// By what it is known to be ripe. A starter of wheat has a net that keeps gas and floats; one of rye has none, and is known by its top
    /// and its smell. Common practice, no source.
    /// </summary>
    public static string Ripe(LessonFormula bread) =>
        bread.Formula.Lines.Any(line =>
            line.Ingredient.StarterOf is { } flour && flour.Allergens.Any(allergen => allergen.Name is "wheat" or "spelt")
        )
            ? "It is ripe when it has doubled or more and a spoonful floats."
            : "It is ripe when it has risen, its top is domed or just begins to sink and shows cracks and holes, and it smells sour and fruity; a spoonful need not float.";
}
