using System.Text.RegularExpressions;
using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>Finds the foods that a text names: by name, and by what is done with them (greased, floured, brushed with egg).</summary>
/// <remarks>Names are matched as whole words, the longest first: buttermilk is not butter, and “butter cakes” in a lesson of that title are no butter.</remarks>
public static partial class FoodMentions
{
    private static readonly IReadOnlyList<Ingredient> Fats = OfRole(IngredientRole.Fat);
    private static readonly IReadOnlyList<Ingredient> Flours = OfRole(IngredientRole.Flour);
    private static readonly IReadOnlyList<Ingredient> Dusts = [.. Flours, .. OfRole(IngredientRole.Sugar), .. OfRole(IngredientRole.Other)];
    private static readonly IReadOnlyList<Ingredient> Eggs = OfRole(IngredientRole.Egg);

    /// <summary>Every food that is named, in order.</summary>
    /// <param name="text">A step or a demonstration, as written.</param>
    /// <param name="titles">What breads and pieces are called, which is no food of the list.</param>
    public static IReadOnlyList<FoodMention> In(string text, IReadOnlyList<string> titles)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(titles);
        var plain = titles.Where(title => title.Length > 0).Aggregate(Braces().Replace(text, Blank), (left, title) => Regex.Replace(left, $@"\b{Regex.Escape(title)}\b", Blank, RegexOptions.IgnoreCase));
        List<FoodMention> deeds =
        [
            .. Deeds(Greasing(), plain, Fats),
            .. Deeds(Flouring(), plain, Flours),
            .. Deeds(Dusting(), plain, Dusts),
            .. Deeds(EggWash(), plain, Eggs),
        ];
        // A verb is no food any more: “butter the tin”, “flour the board”.
        var rest = EggWash().Replace(Flouring().Replace(Greasing().Replace(plain, Blank), Blank), Blank);
        var brushed = Brushing().Matches(rest).Select(match => (match.Groups["with"].Index, End: match.Groups["with"].Index + match.Groups["with"].Length)).ToList();
        return [.. deeds, .. Named(rest).Select(named => new FoodMention(named.Words, named.CanBe, brushed.Any(clause => clause.Index <= named.At && named.At < clause.End)))];
    }

    private static IEnumerable<FoodMention> Deeds(Regex deed, string text, IReadOnlyList<Ingredient> canBe) => deed.Matches(text).Select(match => new FoodMention(match.Value.Trim(), canBe, OnSurface: true));

    private static IEnumerable<(string Words, IReadOnlyList<Ingredient> CanBe, int At)> Named(string text)
    {
        var words = FoodLexicon.Words(text);
        for (var at = 0; at < words.Count; at++)
        {
            for (var length = Math.Min(FoodLexicon.LongestName, words.Count - at); length > 0; length--)
            {
                var name = string.Join(' ', words.Skip(at).Take(length).Select(word => word.Word));
                if (!FoodLexicon.IsNoSuchFood(name) && FoodLexicon.Find(name) is not { } canBe)
                    continue;
                if (!FoodLexicon.IsNoSuchFood(name))
                    yield return (name, FoodLexicon.Find(name)!, words[at].Start);
                at += length - 1;
                break;
            }
        }
    }

    private static IReadOnlyList<Ingredient> OfRole(IngredientRole role) => [.. IngredientCatalog.All.Where(ingredient => ingredient.Role == role)];

    /// <summary>Taken out without moving what follows.</summary>
    private static string Blank(Match match) => new(' ', match.Length);

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Braces();

    [GeneratedRegex(@"\b(greas(e|ed|ing)|buttered|oiled)\b|\b(oil|butter)(?= (the|a|an|each|every|your|all|both) ([\w-]+ ){0,3}?(tins?|cups?|pans?|trays?|sheets?|moulds?|molds?|dish|dishes|rings?|bowls?|paper|griddle|hands)\b)", RegexOptions.IgnoreCase)]
    private static partial Regex Greasing();

    [GeneratedRegex(@"\bfloured\b|\bflour(?= (the|a|an|each|every|your|all|both) ([\w-]+ ){0,3}?(board|bench|surface|worktop|table|counter|tins?|pans?|trays?|baskets?|cloth|hands|rolling pin)\b)", RegexOptions.IgnoreCase)]
    private static partial Regex Flouring();

    [GeneratedRegex(@"\bdust(ed|ing)?(?= (the|a|an|each|every|your|all|both|with|lightly|well|it|them)\b)", RegexOptions.IgnoreCase)]
    private static partial Regex Dusting();

    [GeneratedRegex(@"\begg[ -]?wash(ed)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex EggWash();

    [GeneratedRegex(@"\b(brush|brushed|glaze|glazed|sprinkle|sprinkled|dust|dusted|scatter|scattered)\b[^.;:]*?\bwith\b(?<with>[^.;:]*)", RegexOptions.IgnoreCase)]
    private static partial Regex Brushing();
}
