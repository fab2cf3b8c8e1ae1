using System.Text.RegularExpressions;
using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Classes;

/// <summary>
/// Reads what is in a pack: a mass, a volume of what a cup is known of, or a count of what is counted: <c>5 kg</c>, <c>2 L</c>, <c>30 large
/// eggs</c>, <c>10 medium eggs</c>, <c>10 eggs size M</c>. A comma may be the decimal sign.
/// </summary>
internal static partial class PackContent
{
    private static readonly Bounds Contents = new(0, false, 100_000);

    /// <summary>The mass, or null with the reason noted.</summary>
    public static Mass? Read(Located text, Ingredient ingredient, ProblemList problems)
    {
        var match = NumberAndWords().Match(text.Text);
        var words = match.Groups["words"].Value is "lbs" or "#" ? "lb" : match.Groups["words"].Value;
        if (
            match.Success
            && Number.TryParse(match.Groups["number"].Value.Replace(',', '.'), out var number)
            && GramsIn(words, ingredient) is { } grams
        )
            return Number.Within((double)number, text, "What a pack holds", Contents, problems) is { } many
                ? Mass.FromGrams(many * grams)
                : null;
        if (match.Success && VolumeUnits.Find(words) is not null)
        {
            problems.Add(
                text.Line,
                $"A pack of {ingredient.Name} holds `{text.Text}`, and what a measure of it weighs is not known",
                "Write the mass that the label names: `1 kg`."
            );
            return null;
        }
        if (match.Success && words is not "g" and not "kg" and not "oz" and not "lb" && words.Length > 2)
        {
            problems.Add(text.Line, $"A pack of {ingredient.Name} holds `{text.Text}`", NearestWord.Advice(words, Words(ingredient)));
            return null;
        }
        return Dimensions.Mass.Read(
            DecimalComma().IsMatch(text.Text) ? text with { Text = text.Text.Replace(',', '.') } : text,
            $"What a pack of {ingredient.Name} holds",
            Contents,
            problems
        );
    }

    /// <summary>What one unit other than of mass weighs; null if there is no such unit for the ingredient.</summary>
    private static double? GramsIn(string unit, Ingredient ingredient) =>
        unit switch
        {
            _ when ingredient.GramsPerCup is { } cup && VolumeUnits.Find(unit) is { } litres => litres * cup / Volume.LitresPerCup,
            _ when ingredient.Piece is { } piece && (unit == piece.Singular || unit == piece.Plural) => piece.Grams,
            "lb" => Mass.FromPounds(1).Grams,
            _ when ingredient.Piece is { } piece && Dozen().IsMatch(unit) => 12 * piece.Grams,
            _ when ingredient.Id == "whole_egg" && Eggs().Match(unit) is { Success: true } eggs => eggs.Groups["size"].Value
                is { Length: > 0 } size
                ? EggSize.GramsOf(size)
                : ingredient.Piece?.Grams,
            _ => null,
        };

    private static List<string> Words(Ingredient ingredient) =>
        [
            "kg",
            "g",
            "lb",
            "oz",
            .. ingredient.GramsPerCup is null ? Array.Empty<string>() : VolumeUnits.Usual,
            .. ingredient.Piece is null ? Array.Empty<string>() : [ingredient.Piece.Plural],
            .. ingredient.Id == "whole_egg" ? EggSize.All.Select(size => $"{size} eggs") : [],
        ];

    [GeneratedRegex(
        @"^(?:(?<size>small|medium|large|extra large|jumbo|XL|[SML])\s+)?eggs?(?:\s+(?:size\s+)?(?<size>XL|[SML]))?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Eggs();

    [GeneratedRegex(@"^dozen(\s+(large\s+)?[a-z]+)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Dozen();

    [GeneratedRegex(@"^[0-9]+,[0-9]{1,2}\s*[A-Za-z]+$")]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^(?<number>[0-9]+(?:[.,][0-9]+)?)\s*(?<words>[A-Za-z][A-Za-z ]*|#)$")]
    private static partial Regex NumberAndWords();
}
