using ClassKit.Baking.Allergens;

namespace ClassKit.Baking.Tests.Allergens;

public sealed class AllergenWordsTests
{
    private const string GlutenCereals = "wheat, spelt, khorasan wheat, rye, barley, oats";

    [Theory]
    [InlineData("gluten", GlutenCereals)]
    [InlineData("coeliac", GlutenCereals)]
    [InlineData("Celiac disease", GlutenCereals)]
    [InlineData("gluten-free", GlutenCereals)]
    [InlineData("wheat", "wheat, spelt, khorasan wheat")]
    [InlineData("WHEAT ALLERGY", "wheat, spelt, khorasan wheat")]
    [InlineData("kamut", "khorasan wheat")]
    [InlineData("dairy", "milk")]
    [InlineData("Dairy products", "milk")]
    [InlineData("lactose", "milk")]
    [InlineData("lactose intolerant", "milk")]
    [InlineData("milk", "milk")]
    [InlineData("cow's milk", "milk")]
    [InlineData("cow’s-milk", "milk")]
    [InlineData("egg", "egg")]
    [InlineData("Eggs", "egg")]
    [InlineData("allergic to eggs", "egg")]
    [InlineData("tree nuts", "almond, hazelnut, walnut, cashew, pecan, Brazil nut, pistachio, macadamia nut, pine nut")]
    [InlineData("Tree-Nuts", "almond, hazelnut, walnut, cashew, pecan, Brazil nut, pistachio, macadamia nut, pine nut")]
    [InlineData("nuts", "almond, hazelnut, walnut, cashew, pecan, Brazil nut, pistachio, macadamia nut, pine nut")]
    [InlineData("almonds", "almond")]
    [InlineData("hazelnuts", "hazelnut")]
    [InlineData("filberts", "hazelnut")]
    [InlineData("walnuts", "walnut")]
    [InlineData("cashew nuts", "cashew")]
    [InlineData("pecans", "pecan")]
    [InlineData("brazil nuts", "Brazil nut")]
    [InlineData("pistachios", "pistachio")]
    [InlineData("macadamias", "macadamia nut")]
    [InlineData("pine nuts", "pine nut")]
    [InlineData("peanuts", "peanut")]
    [InlineData("shellfish", "crustaceans, molluscs")]
    [InlineData("crustaceans", "crustaceans")]
    [InlineData("molluscs", "molluscs")]
    [InlineData("mollusks", "molluscs")]
    [InlineData("fish", "fish")]
    [InlineData("soy", "soya")]
    [InlineData("Soya", "soya")]
    [InlineData("soybeans", "soya")]
    [InlineData("sesame", "sesame")]
    [InlineData("sesame-seeds", "sesame")]
    [InlineData("mustard", "mustard")]
    [InlineData("celery", "celery")]
    [InlineData("lupin", "lupin")]
    [InlineData("sulphites", "sulphites")]
    [InlineData("sulfites", "sulphites")]
    [InlineData("oats", "oats")]
    [InlineData("barley", "barley")]
    [InlineData("rye", "rye")]
    public void Everyday_words_are_understood(string typed, string means) =>
        Assert.Equal(means, string.Join(", ", AllergenWords.Find(typed)!.Means.Select(allergen => allergen.Name)));

    [Fact]
    public void Every_allergen_is_found_by_its_own_name() =>
        Assert.All(AllergenCatalog.All, allergen => Assert.Contains(allergen, AllergenWords.Find(allergen.Name)!.Means));

    [Theory]
    [InlineData("gltuen")]
    [InlineData("peanutbutter sandwich")]
    [InlineData("coconut")]
    [InlineData("strawberries")]
    [InlineData("yes")]
    [InlineData("")]
    [InlineData("s")]
    public void Other_words_are_not_guessed_at(string typed) => Assert.Null(AllergenWords.Find(typed));

    [Theory]
    [InlineData("lactose", NeedKind.Intolerance, "no allergy to milk")]
    [InlineData("coeliac", NeedKind.Condition, "no allergy")]
    [InlineData("gluten", NeedKind.Allergy, "ask which")]
    [InlineData("nuts", NeedKind.Allergy, "peanuts")]
    [InlineData("shellfish", NeedKind.Allergy, "Ask which")]
    public void A_word_that_may_mean_something_else_says_so(string typed, NeedKind kind, string note)
    {
        var word = AllergenWords.Find(typed)!;
        Assert.Equal(kind, word.Kind);
        Assert.Contains(note, word.Note, StringComparison.Ordinal);
    }

    /// <summary>Nuts of trees are no peanuts: the word alone does not settle it, and nothing is looked for that was not said.</summary>
    [Fact]
    public void Peanuts_are_no_tree_nuts() => Assert.DoesNotContain(AllergenCatalog.Peanut, AllergenWords.Find("tree nuts")!.Means);
}
