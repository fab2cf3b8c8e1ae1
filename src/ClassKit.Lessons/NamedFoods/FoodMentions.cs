using System.Text.RegularExpressions;
using ClassKit.Baking.Ingredients;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.NamedFoods;

/// <summary>Finds the foods that a text names: by name, and by what is done with them (greased, floured, brushed with egg).</summary>
/// <remarks>
/// Names are matched as whole words, the longest first: buttermilk is not butter, and “butter cakes” in a lesson of that title are no
/// butter.
/// </remarks>
public static partial class FoodMentions
{
    /// <summary>Every food that is named, in order.</summary>
    /// <param name="text">A step or a demonstration, as written.</param>
    /// <param name="titles">What breads and pieces are called, which is no food of the list.</param>
    /// <param name="pantry">The foods there are; those that ship if null.</param>
    public static IReadOnlyList<FoodMention> In(string text, IReadOnlyList<string> titles, Pantry? pantry = null)
    {
        var lexicon = FoodLexicon.Of(pantry ?? Pantry.Shipped);
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(titles);
        var plain = titles.Where(title => title.Length > 0).Aggregate(TextTemplate.Parse(text).OwnWords, WholeWords.Blanked);
        var (greased, floured, washed) = (Greasing().Matches(plain), Flouring().Matches(plain), EggWash().Matches(plain));
        List<FoodMention> deeds =
        [
            .. Deeds(greased, lexicon.OfRole(IngredientRole.Fat)),
            .. Deeds(floured, lexicon.OfRole(IngredientRole.Flour)),
            .. Deeds(Dusting().Matches(plain), lexicon.OfRole(IngredientRole.Flour, IngredientRole.Sugar, IngredientRole.Other)),
            .. Deeds(washed, lexicon.OfRole(IngredientRole.Egg)),
        ];
        // A verb is no food any more: “butter the tin”, “flour the board”.
        var rest = new[] { greased, floured, washed }
            .SelectMany(matches => matches)
            .Aggregate(plain, (left, match) => WholeWords.Blanked(left, match.Index, match.Length));
        var brushed = Brushing().Matches(rest).Select(match => match.Groups["with"]).ToList();
        return
        [
            .. deeds,
            .. Named(rest, lexicon)
                .Select(named => new FoodMention(
                    named.Words,
                    named.CanBe,
                    brushed.Exists(clause => clause.Index <= named.At && named.At < clause.Index + clause.Length)
                )),
        ];
    }

    private static IEnumerable<FoodMention> Deeds(MatchCollection deeds, IReadOnlyList<Ingredient> canBe) =>
        deeds.Select(match => new FoodMention(match.Value.Trim(), canBe, OnSurface: true));

    private static List<NamedFood> Named(string text, FoodLexicon lexicon)
    {
        var found = new List<NamedFood>();
        var words = FoodLexicon.Words(text);
        for (var at = 0; at < words.Count; at++)
        {
            for (var length = Math.Min(lexicon.LongestFrom(words[at]), words.Count - at); length > 0; length--)
            {
                var name = string.Join(' ', words.GetRange(at, length));
                if (!FoodLexicon.IsNoSuchFood(name))
                {
                    if (lexicon.Find(name) is not { } canBe)
                        continue;
                    found.Add(new(name, canBe, words[at].Start));
                }
                at += length - 1;
                break;
            }
        }
        return found;
    }

    private sealed record NamedFood(string Words, IReadOnlyList<Ingredient> CanBe, int At);

    [GeneratedRegex(
        @"\b(greas(e|ed|ing)|buttered|oiled)\b|\b(oil|butter)(?= (the|a|an|each|every|your|all|both) ([\w-]+ ){0,3}?(tins?|cups?|pans?|trays?|sheets?|moulds?|molds?|dish|dishes|rings?|bowls?|paper|griddle|hands)\b)",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Greasing();

    [GeneratedRegex(
        @"\bfloured\b|\bflour(?= (the|a|an|each|every|your|all|both) ([\w-]+ ){0,3}?(board|bench|surface|worktop|table|counter|tins?|pans?|trays?|baskets?|cloth|hands|rolling pin)\b)",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Flouring();

    [GeneratedRegex(@"\bdust(ed|ing)?(?= (the|a|an|each|every|your|all|both|with|lightly|well|it|them)\b)", RegexOptions.IgnoreCase)]
    private static partial Regex Dusting();

    [GeneratedRegex(@"\begg[ -]?wash(ed)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex EggWash();

    [GeneratedRegex(
        @"\b(brush|brushed|glaze|glazed|sprinkle|sprinkled|dust|dusted|scatter|scattered)\b[^.;:]*?\bwith\b(?<with>[^.;:]*)",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Brushing();
}
