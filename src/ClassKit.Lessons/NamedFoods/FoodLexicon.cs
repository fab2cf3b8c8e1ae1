using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Lessons.NamedFoods;

/// <summary>What foods are called in a method, as far as the catalogue has them or a law makes a label declare them.</summary>
internal sealed partial class FoodLexicon
{
    /// <summary>
    /// Foods that hold something to be declared and that the catalogue does not have: no list can name them, so a method may not either.
    /// </summary>
    private static readonly string[] Unlisted =
    [
        "peanut",
        "peanut butter",
        "groundnut",
        "hazelnut",
        "cashew",
        "pecan",
        "pistachio",
        "macadamia",
        "brazil nut",
        "pine nut",
        "nut butter",
        "almond butter",
        "soy",
        "soya",
        "soy sauce",
        "soy milk",
        "soya milk",
        "oat milk",
        "almond milk",
        "nut milk",
        "milk powder",
        "powdered milk",
        "dry milk",
        "condensed milk",
        "evaporated milk",
        "cheese",
        "cream cheese",
        "heavy cream",
        "double cream",
        "single cream",
        "whipping cream",
        "whipped cream",
        "sour cream",
        "clotted cream",
        "creme fraiche",
        "ghee",
        "whey",
        "mascarpone",
        "ricotta",
        "chocolate",
        "margarine",
        "marzipan",
        "praline",
        "nougat",
        "tahini",
        "mayonnaise",
        "mustard",
        "celery",
        "lupin flour",
        "lupin",
        "spelt",
        "spelt flour",
        "barley",
        "barley flour",
        "malt",
        "malt extract",
        "oat flour",
        "breadcrumb",
        "baking spray",
        "fish",
        "anchovy",
        "prawn",
        "shrimp",
        "crab",
        "almond extract",
        "almond essence",
        "almond flavouring",
        "almond flavoring",
        "custard powder",
        "custard",
        "pastry cream",
        "ice cream",
        "caramel",
        "toffee",
        "fudge",
        "dulce de leche",
        "pesto",
        "hummus",
        "halva",
        "tofu",
        "miso",
        "tempeh",
        "edamame",
        "seitan",
        "teriyaki sauce",
        "worcestershire sauce",
        "worcester sauce",
        "fish sauce",
        "oyster sauce",
        "beer",
        "ale",
        "lager",
        "wine",
        "cider",
        "sherry",
        "couscous",
        "bulgur",
        "freekeh",
        "pasta",
        "noodle",
        "matzo",
        "panko",
        "rusk",
        "cracker",
        "cracker crumb",
        "biscuit crumb",
        "cookie crumb",
        "cake crumb",
        "filo",
        "filo pastry",
        "phyllo",
        "puff pastry",
        "hazelnut spread",
        "dried apricot",
        "feta",
        "parmesan",
        "mozzarella",
        "cheddar",
        "gruyere",
        "halloumi",
        "paneer",
        "quark",
        "skyr",
        "kefir",
        "salmon",
        "tuna",
        "cod",
        "sardine",
        "mackerel",
        "lobster",
        "crayfish",
        "langoustine",
        "mussel",
        "squid",
        "oyster",
        "clam",
        "octopus",
    ];

    /// <summary>Of the unlisted what a method may make itself of what the formula lists, so that naming it is no proof of a food besides.</summary>
    private static readonly HashSet<string> MadeByMethods =
    [
        "custard",
        "pastry cream",
        "caramel",
        "toffee",
        "pesto",
        "puff pastry",
        "filo",
        "filo pastry",
        "phyllo",
        "biscuit crumb",
        "cake crumb",
    ];

    /// <summary>Names of foods within names of other things, and foods that nothing has to be declared of.</summary>
    private static readonly HashSet<string> NoSuchFood =
    [
        "butter knife",
        "egg timer",
        "egg slicer",
        "egg size",
        "flour sifter",
        "flour scoop",
        "flour brush",
        "milk pan",
        "sugar thermometer",
        "salt cellar",
        "oil bath",
        "oil thermometer",
        "fish slice",
        "cheese grater",
        "cheese wire",
        "cheese cloth",
        "apple butter",
        "soda water",
        "water",
        "nut brown",
        "nut size",
        "size of a walnut",
        "size of an almond",
        "size of a hazelnut",
        "size of a nut",
        "size of an egg",
        "size of a pea",
        "walnut size",
        "hazelnut size",
        "almond size",
        "milk bread",
        "soda bread",
        "malt colour",
        "caramel colour",
        "caramel color",
        "caramel coloured",
        "caramel colored",
        "caramel brown",
        "oyster mushroom",
        "nut cracker",
        "pasta machine",
        "pasta roller",
        "pasta pot",
        "wine glass",
        "wine bottle",
        "wine cork",
        "beer bottle",
        "beer glass",
        "ice cream scoop",
        "tea towel",
        "coffee grinder",
        "coffee filter",
        "potato masher",
        "potato ricer",
        "apple corer",
        "garlic press",
        "nutmeg grater",
        "rice cooker",
        "salt and pepper mill",
        "pepper mill",
    ];

    private static readonly ConditionalWeakTable<Pantry, FoodLexicon> Known = [];

    private readonly Dictionary<string, IReadOnlyList<Ingredient>> _byName;

    /// <summary>By the first word of names, how many words the longest of them has.</summary>
    private readonly Dictionary<string, int> _longest;

    private FoodLexicon(Pantry pantry)
    {
        Pantry = pantry;
        _byName = Names(pantry);
        _longest = Lengths();
    }

    /// <summary>The words for what a pantry holds, put together once for each.</summary>
    public static FoodLexicon Of(Pantry pantry) => Known.GetValue(pantry, made => new(made));

    /// <summary>What is in the pantry.</summary>
    public Pantry Pantry { get; }

    /// <summary>The ingredients of some kinds.</summary>
    public IReadOnlyList<Ingredient> OfRole(params IngredientRole[] roles) =>
        [.. roles.SelectMany(role => Pantry.All.Where(ingredient => ingredient.Role == role))];

    /// <summary>The most words of a name that begins with a word; 0 if none does.</summary>
    public int LongestFrom(FoodWord first) => _longest.GetValueOrDefault(first.Word);

    /// <summary>
    /// Which ingredients a name can mean; empty where the catalogue has none; null where it is no food that is looked for.
    /// </summary>
    public IReadOnlyList<Ingredient>? Find(string name) => _byName.GetValueOrDefault(name);

    /// <summary>True if a method that names it may have made it of what is listed.</summary>
    public static bool MayBeMade(string name) => MadeByMethods.Contains(name);

    /// <summary>True if a name is to be passed over as a whole.</summary>
    public static bool IsNoSuchFood(string name) => NoSuchFood.Contains(name);

    /// <summary>
    /// The words of a text in small letters and in the singular, with where each begins; marks between them are words too, for “until
    /// brown; sugar on top” is no brown sugar.
    /// </summary>
    public static List<FoodWord> Words(string text) =>
        [.. Word().Matches(text).Select(match => new FoodWord(Singular(match.Value.ToLowerInvariant()), match.Index))];

    /// <summary>True if the words of a name are the last of an ingredient's, and not all of them.</summary>
    public static bool IsEndOf(string name, Ingredient ingredient) =>
        ingredient
            .OtherNames.Append(Bracketed().Replace(ingredient.Name, ""))
            .Any(called => Folded(called).EndsWith(" " + Folded(name), StringComparison.Ordinal));

    private static Dictionary<string, IReadOnlyList<Ingredient>> Names(Pantry pantry)
    {
        var names = new Dictionary<string, IReadOnlyList<Ingredient>>();
        foreach (var ingredient in pantry.All.Where(ingredient => ingredient.Id != "water"))
        {
            foreach (
                var name in ingredient
                    .OtherNames.Append(Bracketed().Replace(ingredient.Name, ""))
                    .Append(ingredient.Id.Replace('_', ' '))
                    .Append(ByKind(ingredient))
                    .OfType<string>()
                    .Select(Folded)
                    .Distinct()
            )
                names[name] = names.TryGetValue(name, out var others) ? [.. others, ingredient] : [ingredient];
        }
        foreach (var unlisted in Unlisted.Select(Folded))
            names.TryAdd(unlisted, []);
        return names;
    }

    /// <summary>What a method calls it by its kind alone: every flour is flour, every milk milk.</summary>
    private static string? ByKind(Ingredient ingredient) =>
        ingredient.Role switch
        {
            IngredientRole.Flour => "flour",
            IngredientRole.Egg => "egg",
            IngredientRole.Fat => "fat",
            IngredientRole.Sugar => "sugar",
            IngredientRole.Salt => "salt",
            IngredientRole.Yeast => "yeast",
            IngredientRole.Liquid when Bracketed().Replace(ingredient.Name, "").EndsWith(" milk", StringComparison.OrdinalIgnoreCase) =>
                "milk",
            _ => null,
        };

    private Dictionary<string, int> Lengths()
    {
        var longest = new Dictionary<string, int>();
        foreach (var words in _byName.Keys.Concat(NoSuchFood).Select(name => name.Split(' ')))
            longest[words[0]] = Math.Max(words.Length, longest.GetValueOrDefault(words[0]));
        return longest;
    }

    private static string Folded(string name) => string.Join(' ', Words(name));

    private static string Singular(string word) =>
        word switch
        {
            "anchovies" => "anchovy",
            _ when word.Length > 3
                    && word.EndsWith('s')
                    && !word.EndsWith("ss", StringComparison.Ordinal)
                    && word is not ("molasses" or "couscous" or "hummus" or "octopus" or "always" or "this") => word[..^1],
            _ when word == "sized" => "size",
            _ => word,
        };

    [GeneratedRegex(@"\p{L}+|[,;:.!?()]")]
    private static partial Regex Word();

    [GeneratedRegex(@"\s*[(,].*$")]
    private static partial Regex Bracketed();
}
