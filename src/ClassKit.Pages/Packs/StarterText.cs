using ClassKit.Lessons.Authored;

namespace ClassKit.Pages.Packs;

/// <summary>A starter in words.</summary>
internal static class StarterText
{
    /// <summary>By what it is known to be ripe. A starter of wheat has a net that keeps gas and floats; one of rye has none, and is known by its top and its smell. Common practice, no source.</summary>
    public static string Ripe(LessonFormula bread) => bread.Formula.Lines.Any(line => line.Ingredient.StarterOf is { } flour && flour.Allergens.Any(allergen => allergen.Name is "wheat" or "spelt"))
        ? "It is ripe when it has doubled or more and a spoonful floats."
        : "It is ripe when it has risen, its top is domed or just begins to sink and shows cracks and holes, and it smells sour and fruity; a spoonful need not float.";
}
