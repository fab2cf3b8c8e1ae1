using System.Globalization;
using System.Text.RegularExpressions;

namespace ClassKit.Baking.Ingredients;

/// <summary>
/// A sourdough starter at the hydration that its name says: <c>Sourdough starter, 100 %</c>, <c>Rye sourdough starter, 80 %</c>, <c>Bread
/// flour sourdough starter, 100 %</c>.
/// </summary>
/// <remarks>
/// Flour and water in the ratio of the hydration; what microbes have made of it is left out, some per cent of the flour. Its flour is
/// counted among the 100 % (Guild layout: Bread Bakers Guild of America, 2009). Its acid, from memory: ripe sourdoughs have 0.5 % to 1.2 %,
/// counted as lactic.
/// </remarks>
internal static partial class Starter
{
    private const int Wettest = 500;

    /// <summary>The starter; null for a text that names none, or none with a hydration from 40 % to 500 %.</summary>
    public static Ingredient? Find(string text, Pantry pantry)
    {
        var match = Named().Match(text);
        if (
            !match.Success
            || !int.TryParse(match.Groups["hydration"].Value, CultureInfo.InvariantCulture, out var hydration)
            || hydration is < 40 or > Wettest
        )
            return null;
        var of = match.Groups["of"].Value.Trim().ToLowerInvariant();
        if (of is "wheat")
            of = "";
        if (Flour(of, pantry) is not { } flour)
            return null;
        var share = 100.0 / (100 + hydration);
        var solids = flour.Solids ?? FoodSolids.Unknown(flour.WaterShare);
        return flour with
        {
            Id = string.Create(
                CultureInfo.InvariantCulture,
                $"{(of.Length == 0 ? "" : of.Replace(' ', '_') + "_")}sourdough_starter_{hydration}"
            ),
            Name = string.Create(
                CultureInfo.InvariantCulture,
                $"{(of.Length == 0 ? "Sourdough" : char.ToUpperInvariant(of[0]) + of[1..] + " sourdough")} starter, {hydration} %"
            ),
            Role = IngredientRole.Other,
            StarterOf = flour,
            StarterFlourShare = share,
            LacticAcidShare = new(0.005, 0.008, 0.012),
            WaterShare = 1 - (1 - flour.WaterShare) * share,
            Solids = new(solids.Protein * share, solids.Fat * share, solids.Carbohydrate * share, solids.Ash * share),
            GramsPerCup = null,
            GramsPerTeaspoon = null,
            SugarShare = null,
            OtherNames = ["starter", "sourdough", "sourdough starter", "levain"],
            Source = $"its hydration, and the flour: {flour.Source}",
        };
    }

    /// <summary>The flour that it is fed with: white wheat where nothing is said; a flour by its name, with or without the word.</summary>
    private static Ingredient? Flour(string of, Pantry pantry)
    {
        var name = of switch
        {
            "" => "ap_flour",
            "wholemeal" => "whole_wheat_flour",
            _ => of.Replace(' ', '_'),
        };
        return (pantry.TryFind(name, out var flour) || pantry.TryFind($"{name}_flour", out flour)) && flour.Role == IngredientRole.Flour
            ? flour
            : null;
    }

    [GeneratedRegex(
        @"^(?<of>[a-z][a-z -]*?)??\s*\b(?:sourdough(?: starter)?|starter|levain),?\s*\(?(?<hydration>\d{2,3})\s*%(?: hydration)?\)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Named();
}
