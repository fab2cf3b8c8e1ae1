using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Mixing;

namespace ClassKit.UseCases.Checking;

/// <summary>Holds a class's price list against what the lessons that were checked with it use.</summary>
internal static class PriceGaps
{
    private const int MostNamed = 4;

    /// <summary>What is used and has no price, and what has a price and is not used.</summary>
    public static IEnumerable<Diagnostic> Of(string path, ClassProfile profile, IReadOnlyList<Lesson> lessons)
    {
        if (profile.Prices is not { } prices || lessons.Count == 0)
            yield break;
        var used = lessons
            .SelectMany(lesson => lesson.Formulas)
            .SelectMany(bread =>
                bread
                    .Formula.Lines.Select(line => line.Ingredient)
                    .Concat(bread.Surfaces.Select(surface => surface.Ingredient))
                    // What is built is ordered as the flour that feeds it, and as ripe starter to begin with.
                    .Concat(
                        bread.StarterBuild is null ? [] : bread.Formula.Lines.Select(line => line.Ingredient.StarterOf).OfType<Ingredient>()
                    )
            )
            // A starter is paid for as the flour that feeds it, unless the list has a price of its own.
            .Select(ingredient => ingredient.StarterOf is { } fed && !prices.Packs.ContainsKey(ingredient.Id) ? fed : ingredient)
            .DistinctBy(ingredient => ingredient.Id)
            .ToList();
        var missing = used.Where(ingredient => !prices.Packs.ContainsKey(ingredient.Id) && !TapWater.Is(ingredient))
            .Select(ingredient => ingredient.Name)
            .ToList();
        List<string> idle =
        [
            .. prices
                .Packs.Keys.Except(used.Select(ingredient => ingredient.Id))
                .Where(id => !(Pantry.Shipped.TryFind(id, out var tap) && TapWater.Is(tap)))
                .Select(id => Pantry.Shipped.TryFind(id, out var known) ? known.Name : id.Replace('_', ' ')),
        ];
        if (missing.Count > 0)
            yield return new(
                path,
                null,
                $"The price list has no price for {Listed(missing)}",
                "Add a row for each: what a piece costs is only known with all of them."
            )
            {
                Weight = Weight.Noted,
            };
        if (idle.Count > 0)
            yield return new(
                path,
                null,
                $"The price list has prices for what no lesson here uses: {Listed(idle)}",
                "Nothing need be done if other lessons use it."
            )
            {
                Weight = Weight.Noted,
            };
    }

    private static string Listed(List<string> names) =>
        string.Join(", ", names.Take(MostNamed)) + (names.Count > MostNamed ? $" and {names.Count - MostNamed} more" : "");
}
