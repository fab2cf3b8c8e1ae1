using System.Text.RegularExpressions;
using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>What foods are called in a method, as far as the catalogue has them or a law makes a label declare them.</summary>
internal static partial class FoodLexicon
{
    /// <summary>The most words of one name.</summary>
    public const int LongestName = 4;

    /// <summary>Foods that hold something to be declared and that the catalogue does not have: no list can name them, so a method may not either.</summary>
    private static readonly string[] Unlisted =
    [
        "peanut", "peanut butter", "groundnut", "hazelnut", "cashew", "pecan", "pistachio", "macadamia", "brazil nut", "pine nut", "nut butter", "almond butter",
        "soy", "soya", "soy sauce", "soy milk", "soya milk", "oat milk", "almond milk", "nut milk", "milk powder", "powdered milk", "dry milk", "condensed milk", "evaporated milk",
        "cheese", "cream cheese", "heavy cream", "double cream", "single cream", "whipping cream", "whipped cream", "sour cream", "clotted cream", "creme fraiche", "ghee", "whey", "mascarpone", "ricotta",
        "chocolate", "margarine", "marzipan", "praline", "nougat", "tahini", "mayonnaise", "mustard", "celery", "lupin flour", "lupin",
        "spelt", "spelt flour", "barley", "barley flour", "malt", "malt extract", "oat flour", "breadcrumb", "baking spray",
        "fish", "anchovy", "prawn", "shrimp", "crab",
    ];

    /// <summary>Names of foods within names of other things, and foods that nothing has to be declared of.</summary>
    private static readonly string[] NoSuchFood =
    [
        "butter knife", "egg timer", "egg slicer", "egg size", "flour sifter", "flour scoop", "flour brush", "milk pan", "sugar thermometer", "salt cellar", "oil bath", "oil thermometer", "fish slice", "cheese grater", "cheese wire", "cheese cloth",
        "coconut milk", "rice milk", "coconut oil", "apple butter", "cocoa butter", "cocoa powder", "custard powder", "garlic powder", "soda water", "water", "nut brown", "nut size", "almond extract", "corn flour",
        "size of a walnut", "size of an almond", "size of a hazelnut", "size of a nut", "size of an egg", "size of a pea", "walnut size", "hazelnut size", "almond size", "milk bread", "soda bread", "malt colour",
    ];

    private static readonly Dictionary<string, IReadOnlyList<Ingredient>> ByName = Names();

    /// <summary>Which ingredients a name can mean; empty where the catalogue has none; null where it is no food that is looked for.</summary>
    public static IReadOnlyList<Ingredient>? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>True if a name is to be passed over as a whole.</summary>
    public static bool IsNoSuchFood(string name) => NoSuchFood.Contains(name);

    /// <summary>The words of a text in small letters and in the singular, with where each begins.</summary>
    public static IReadOnlyList<(string Word, int Start)> Words(string text) => [.. Word().Matches(text).Select(match => (Singular(match.Value.ToLowerInvariant()), match.Index))];

    private static Dictionary<string, IReadOnlyList<Ingredient>> Names()
    {
        var names = IngredientCatalog.All.Where(ingredient => ingredient.Id != "water")
            .SelectMany(ingredient => ingredient.OtherNames.Append(Bracketed().Replace(ingredient.Name, "")).Append(ingredient.Id.Replace('_', ' ')).Select(name => (Name: Folded(name), ingredient)))
            .GroupBy(named => named.Name)
            .ToDictionary(named => named.Key, named => (IReadOnlyList<Ingredient>)[.. named.Select(each => each.ingredient).Distinct()]);
        foreach (var unlisted in Unlisted.Select(Folded))
            names.TryAdd(unlisted, []);
        return names;
    }

    private static string Folded(string name) => string.Join(' ', Words(name).Select(word => word.Word));

    private static string Singular(string word) => word switch
    {
        "anchovies" => "anchovy",
        _ when word.Length > 3 && word.EndsWith('s') && !word.EndsWith("ss", StringComparison.Ordinal) && word is not ("molasses" or "always" or "this") => word[..^1],
        _ when word == "sized" => "size",
        _ => word,
    };

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\s*[(,].*$")]
    private static partial Regex Bracketed();
}
