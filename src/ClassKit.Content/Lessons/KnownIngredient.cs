using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Ingredients;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Lessons;

/// <summary>Finds an ingredient by its id, its name or another name that is no other one's too.</summary>
internal static class KnownIngredient
{
    private const int MostOffered = 6;

    /// <summary>The ingredient, or null with those offered that may be meant.</summary>
    public static Ingredient? Find(Located name, ProblemList problems)
    {
        var called = problems.Pantry.Called(name.Text);
        if (called is [var only])
            return only;
        if (called.Count > 1)
            problems.Add(
                name.Line,
                $"`{name.Text}` may be several ingredients",
                $"Say which: {string.Join(", ", called.Take(MostOffered).Select(ingredient => ingredient.Name))}."
            );
        else if (!problems.IsBeneathBroken)
            problems.Add(name.Line, $"`{name.Text}` is not an ingredient that is known here", Advice(name.Text, problems.Pantry));
        return null;
    }

    /// <summary>The same, called as its author calls it: whose bag says medium rye flour reads so on every page.</summary>
    public static Ingredient? AsWritten(Located name, ProblemList problems) =>
        Find(name, problems) is not { } known ? null
        : known.OtherNames.FirstOrDefault(other => string.Equals(other, name.Text, StringComparison.OrdinalIgnoreCase)) is { } called
            ? known with
            {
                Name = char.ToUpperInvariant(called[0]) + called[1..],
                OtherNames = [.. known.OtherNames, known.Name],
                PantryName = known.Name,
            }
        : known;

    private static string Advice(string typed, Pantry pantry)
    {
        if (
            typed.Contains("starter", StringComparison.OrdinalIgnoreCase)
            || typed.Contains("levain", StringComparison.OrdinalIgnoreCase)
            || typed.Contains("sourdough", StringComparison.OrdinalIgnoreCase)
        )
            return "Write a starter with its hydration: `Sourdough starter, 100 %`, `Rye sourdough starter, 80 %`.";
        var near = NearestName.AllTo(
            typed,
            pantry.All.SelectMany(ingredient =>
                ingredient.OtherNames.Where(other => other.Contains(' ', StringComparison.Ordinal)).Prepend(ingredient.Name)
            ),
            3
        );
        return near.Count > 0
            ? $"Did you mean {string.Join(" or ", near.Select(word => $"`{word}`"))}?"
            : $"Add it as a row of your own to a file `{IngredientsReader.FileNames[0]}` beside the lesson or the class profile: at least its name, kind, water and source.";
    }
}
