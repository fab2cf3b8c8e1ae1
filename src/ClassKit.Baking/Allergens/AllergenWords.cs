using System.Text.RegularExpressions;

namespace ClassKit.Baking.Allergens;

/// <summary>What people call allergens, held against the closed vocabulary of <see cref="AllergenCatalog"/>.</summary>
public static partial class AllergenWords
{
    private const string NotAnAllergy =
        "Lactose intolerance is no allergy to milk. What holds milk is shown; ask how much is borne, and whether milk itself is meant.";
    private const string Coeliac = "Coeliac disease is no allergy, and as strict: every cereal with gluten is shown. Ask about oats.";
    private const string Gluten =
        "Gluten may mean coeliac disease, a wheat allergy or something else: ask which. Every cereal with gluten is shown.";
    private const string Nuts = "Taken as the nuts of trees. Ask whether peanuts are meant too, and whether pine nuts or coconut are.";
    private const string Shellfish = "Taken as crustaceans and molluscs. Ask which.";

    /// <summary>Every word, in the singular, in small letters and without hyphens.</summary>
    public static IReadOnlyList<AllergenWord> All { get; } =
    [
        .. Words(NeedKind.Condition, Coeliac, AllergenCatalog.Of(AllergenGroup.GlutenCereals), "coeliac", "celiac"),
        .. Words(NeedKind.Allergy, Gluten, AllergenCatalog.Of(AllergenGroup.GlutenCereals), "gluten"),
        .. Words(
            NeedKind.Allergy,
            "Taken as every cereal with gluten. Ask which.",
            AllergenCatalog.Of(AllergenGroup.GlutenCereals),
            "cereal",
            "grain"
        ),
        .. Words("wheat spelt khorasan-wheat", "wheat", "wheat flour", "durum", "semolina", "einkorn", "emmer"),
        .. Words("spelt", "spelt"),
        .. Words("khorasan-wheat", "khorasan wheat", "khorasan", "kamut"),
        .. Words("wheat rye", "triticale"),
        .. Words("rye", "rye"),
        .. Words("barley", "barley", "malt"),
        .. Words("oats", "oat"),
        .. Words("egg", "egg", "hens egg", "egg white", "egg yolk"),
        .. Words("fish", "fish"),
        .. Words("peanut", "peanut", "groundnut", "arachis"),
        .. Words("soya", "soya", "soy", "soybean", "soya bean", "soy bean"),
        .. Words(
            "milk",
            "milk",
            "dairy",
            "cows milk",
            "goats milk",
            "sheeps milk",
            "milk protein",
            "casein",
            "whey",
            "butter",
            "cheese",
            "cream"
        ),
        .. Words(NeedKind.Intolerance, NotAnAllergy, [AllergenCatalog.Milk], "lactose"),
        .. Words(NeedKind.Allergy, Nuts, AllergenCatalog.Of(AllergenGroup.Nuts), "nut"),
        .. Words(NeedKind.Allergy, "", AllergenCatalog.Of(AllergenGroup.Nuts), "tree nut"),
        .. Words("almond", "almond"),
        .. Words("hazelnut", "hazelnut", "filbert", "cobnut"),
        .. Words("walnut", "walnut", "black walnut", "california walnut", "heartnut"),
        .. Words("cashew", "cashew", "cashew nut"),
        .. Words("pecan", "pecan", "pecan nut"),
        .. Words("Brazil-nut", "brazil nut", "brazil"),
        .. Words("pistachio", "pistachio", "pistachio nut"),
        .. Words("macadamia-nut", "macadamia nut", "macadamia", "queensland nut"),
        .. Words("pine-nut", "pine nut", "pinon", "pignoli"),
        .. Words("celery", "celery", "celeriac"),
        .. Words("mustard", "mustard"),
        .. Words("sesame", "sesame", "sesame seed", "tahini"),
        .. Words("sulphites", "sulphite", "sulfite", "sulphur dioxide", "sulfur dioxide"),
        .. Words("lupin", "lupin", "lupine"),
        .. Words("crustaceans", "crustacean", "crustacean shellfish", "crab", "lobster", "prawn", "shrimp", "crayfish"),
        .. Words(
            "molluscs",
            "mollusc",
            "mollusk",
            "molluscan shellfish",
            "mussel",
            "oyster",
            "clam",
            "scallop",
            "squid",
            "octopus",
            "snail"
        ),
        .. Words(
            NeedKind.Allergy,
            Shellfish,
            [.. AllergenCatalog.Of(AllergenGroup.Crustaceans), .. AllergenCatalog.Of(AllergenGroup.Molluscs)],
            "shellfish"
        ),
        .. Words(
            NeedKind.Allergy,
            "Taken as fish, crustaceans and molluscs. Ask which.",
            [AllergenCatalog.Fish, .. AllergenCatalog.Of(AllergenGroup.Crustaceans), .. AllergenCatalog.Of(AllergenGroup.Molluscs)],
            "seafood"
        ),
    ];

    private static readonly Dictionary<string, AllergenWord> ByWord = All.ToDictionary(word => word.Word, StringComparer.Ordinal);

    /// <summary>
    /// The word that a text is, whether capitals, hyphens or the plural are used, and “allergy” or the like stands behind it; null if it is
    /// none.
    /// </summary>
    public static AllergenWord? Find(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = Around().Replace(Gaps().Replace(Apostrophes().Replace(text, "").ToLowerInvariant(), " ").Trim(), "");
        return Singulars(plain).Select(word => ByWord.GetValueOrDefault(word)).FirstOrDefault(word => word is not null);
    }

    private static IEnumerable<string> Singulars(string word)
    {
        yield return word;
        if (word.EndsWith("ies", StringComparison.Ordinal))
            yield return word[..^3] + "y";
        if (word.EndsWith("es", StringComparison.Ordinal))
            yield return word[..^2];
        if (word.EndsWith('s'))
            yield return word[..^1];
    }

    private static IEnumerable<AllergenWord> Words(string names, params string[] words) =>
        Words(
            NeedKind.Allergy,
            "",
            [.. names.Split(' ').Select(name => AllergenCatalog.All.Single(allergen => allergen.Name == name.Replace('-', ' ')))],
            words
        );

    private static IEnumerable<AllergenWord> Words(NeedKind kind, string note, IReadOnlyList<Allergen> means, params string[] words) =>
        words.Select(word => new AllergenWord(word, means) { Kind = kind, Note = note });

    [GeneratedRegex("['’`]")]
    private static partial Regex Apostrophes();

    [GeneratedRegex(@"[\s\-‐‑–_]+")]
    private static partial Regex Gaps();

    [GeneratedRegex(
        "^(allergic to|allergy to|intolerant of|intolerance to|no) | (allergy|allergies|allergic|intolerance|intolerant|disease|sensitivity|free|products?)$"
    )]
    private static partial Regex Around();
}
