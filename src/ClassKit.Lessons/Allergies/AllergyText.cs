using ClassKit.Baking.Allergens;
using ClassKit.Baking.Cooking;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Lessons.Allergies;

/// <summary>
/// What is declared and what is not known, in words that pages and workbooks share. Nothing here says that something is without an
/// allergen: nobody but a label knows.
/// </summary>
public static class AllergyText
{
    /// <summary>An ingredient in a table: <c>wheat; perhaps barley</c>. Where nothing is declared the label is all there is.</summary>
    public static string Of(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        var perhaps = ingredient.Doubts.SelectMany(doubt => doubt.Maybe).Distinct().ToList();
        string[] parts =
        [
            .. ingredient.Allergens.Count > 0 ? [Names(ingredient.Allergens)] : Array.Empty<string>(),
            .. perhaps.Count > 0 ? [$"perhaps {Names(perhaps)}"] : Array.Empty<string>(),
        ];
        return parts.Length > 0 ? string.Join("; ", parts)
            : TapWater.Is(ingredient) ? "from the tap"
            : "read the label";
    }

    /// <summary>Allergens by name; all nuts of trees are told together.</summary>
    public static string Names(IEnumerable<Allergen> allergens) => string.Join(", ", Each(allergens));

    /// <summary>The same, a word each.</summary>
    public static IReadOnlyList<string> Each(IEnumerable<Allergen> allergens)
    {
        ArgumentNullException.ThrowIfNull(allergens);
        var all = allergens.ToList();
        var nuts = AllergenCatalog.Of(AllergenGroup.Nuts);
        return nuts.All(all.Contains)
            ? [.. all.Except(nuts).Select(allergen => allergen.Name), "tree nuts"]
            : [.. all.Select(allergen => allergen.Name)];
    }

    /// <summary>What the class profile's word was taken for: <c>Gluten: wheat, spelt, ...</c>.</summary>
    public static string Of(AllergenWord need)
    {
        ArgumentNullException.ThrowIfNull(need);
        var word = char.ToUpperInvariant(need.Word[0]) + need.Word[1..];
        var means = Names(need.Means);
        return means.Equals(need.Word, StringComparison.OrdinalIgnoreCase) ? word : $"{word} ({means})";
    }

    /// <summary>What a bread means for a need: what is declared, what is published instead, what only labels tell.</summary>
    public static string Of(BreadConcern concern)
    {
        ArgumentNullException.ThrowIfNull(concern);
        string[] parts =
        [
            DeclaredIn(concern.Declared.Select(found => (found.Ingredient, found.Holds)), "not to be handled or tasted"),
            .. concern.Declared.Select(Instead),
            .. concern.Declared.Count == 0 ? Array.Empty<string>()
            : concern.HasStandIns ? ["With what is published it is another bread: bake a trial, apart and labelled."]
            : ["So no other version of it is offered."],
            .. NotKnown(concern.Unknown),
            .. concern.IsOffered ? concern.Shares.Select(Shared) : [],
            "Read every label.",
        ];
        return string.Join(" ", parts);
    }

    /// <summary>What a demonstration means for a need: nothing stands in for what is shown, so it is only said what to keep away from.</summary>
    public static string Of(ShownConcern concern)
    {
        ArgumentNullException.ThrowIfNull(concern);
        string[] parts =
        [
            DeclaredIn(concern.Declared, "not to be handled, tasted or passed to this student"),
            .. NotKnown(concern.Unknown),
            "Read every label.",
        ];
        return string.Join(" ", parts);
    }

    private static string DeclaredIn(IEnumerable<(Ingredient Ingredient, IReadOnlyList<Allergen> Holds)> declared, string kept) =>
        declared.Select(found => $"{Lower(found.Ingredient)} ({Names(found.Holds)})").ToList() is { Count: > 0 } found
            ? $"Declared in {string.Join(", ", found)}: {kept}."
            : "Declared in no ingredient here, which proves nothing.";

    /// <summary>What is declared of one bread or demonstration, for everybody: <c>egg, milk, wheat</c>.</summary>
    public static string Declared(AllergenDeclaration of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return of.Declared.Count > 0 ? Names(of.Declared.Select(found => found.Allergen)) : "read the labels";
    }

    /// <summary>What is not known of one bread or demonstration, for everybody: <c>barley in bread flour</c>.</summary>
    public static string Unknown(AllergenDeclaration of)
    {
        ArgumentNullException.ThrowIfNull(of);
        var doubts = of
            .Unknown.Select(found =>
                found.Doubt.Maybe.Count > 0
                    ? $"{Names(found.Doubt.Maybe)} in {Lower(found.Ingredient)}"
                    : $"anything else in {Lower(found.Ingredient)}"
            )
            .Distinct()
            .ToList();
        return doubts.Count > 0 ? string.Join("; ", doubts) : "what else is in the products bought";
    }

    private static IReadOnlyList<string> NotKnown(IReadOnlyList<(Ingredient Ingredient, AllergenDoubt Doubt)> unknown) =>
        unknown.Count > 0
            ? [$"Not known: {string.Join("; ", unknown.Select(found => $"{Lower(found.Ingredient)} ({found.Doubt.Why})"))}."]
            : [];

    private static string Shared(SharedPlace shared)
    {
        var (its, first) = shared.Way switch
        {
            CookingWay.Fryer => ("fat", "fried in new fat before them or in a fryer of its own"),
            CookingWay.Griddle => ("griddle", "cooked on a clean one before them or on one of its own"),
            CookingWay.Pan => ("pan", "cooked in a clean one before them or in one of its own"),
            _ => ("water", "boiled in new water before them or in a pot of its own"),
        };
        var (certain, perhaps) = (Others(shared.With, shared.Shown), Others(shared.InDoubt, shared.ShownInDoubt));
        return (certain.Length, perhaps.Length) switch
        {
            (> 0, > 0) =>
                $"Its {its} is that of {certain}, and carries it over: not for this student, unless it is {first}. That of {perhaps}, too, may carry it over: read their labels, or do the same.",
            (> 0, _) => $"Its {its} is that of {certain}, and carries it over: not for this student, unless it is {first}.",
            _ =>
                $"Its {its} is that of {perhaps}, and may carry it over: not for this student before their labels are read, unless it is {first}.",
        };
    }

    private static string Others(IReadOnlyList<LessonFormula> breads, IReadOnlyList<LessonDemonstration> shown) =>
        string.Join(
            ", ",
            [
                .. breads.Select(bread => bread.Formula.Title.ToLowerInvariant()),
                .. shown.Select(demonstration => $"the demonstration “{demonstration.Name}”"),
            ]
        );

    private static string Instead(ConcernedIngredient found)
    {
        if (found.StandIn is not { } standIn)
            return $"Instead of {Lower(found.Ingredient)}: nothing published that fits.";
        var brings = standIn.Brings.Count > 0 ? $" It brings {Names(standIn.Brings)}, which the class names too." : "";
        var unknown =
            standIn.Unknown.Count > 0
                ? $" Not known of it: {string.Join("; ", standIn.Unknown.Select(doubt => $"{doubt.Name} ({doubt.Why})"))}."
                : "";
        return $"Instead of {Lower(found.Ingredient)}: {standIn.Published.Instead} ({standIn.Published.Source}).{brings}{unknown}";
    }

    private static string Lower(Ingredient ingredient) => ingredient.Name.ToLowerInvariant();
}
