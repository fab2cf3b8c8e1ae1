using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;
using ClassKit.Terms.Rules;

namespace ClassKit.Content.Rubrics;

/// <summary>Reads the categories of a grade, whose weights come to 100 %.</summary>
internal static class CategoryTable
{
    private static readonly string[] Columns = ["Category", "Weight", "Drop lowest", "Works count"];
    private static readonly Bounds Weights = new(0, false, 100);
    private static readonly Bounds Drops = new(0, true, Category.MostDropped);
    private static readonly Dictionary<string, CategoryCounting> Countings = new()
    {
        ["alike"] = CategoryCounting.Alike,
        ["by points"] = CategoryCounting.ByPoints,
    };

    public static IReadOnlyList<Category> Read(Section? section, ProblemList problems)
    {
        var before = problems.Count;
        List<Category> categories = [];
        foreach (var row in Tables.Rows(section, Columns, problems))
        {
            if (One(row, problems) is not { } category)
                continue;
            if (categories.Exists(known => known.Name.Equals(category.Name, StringComparison.OrdinalIgnoreCase)))
                problems.Add(row.Line, $"The category `{category.Name}` is here a second time", "Put both into one row.");
            categories.Add(category);
        }
        if (problems.Count > before || section is null)
            return categories;
        if (categories.Count == 0)
            problems.Add(section.Line, "There are no categories", "Add a row to the table for each kind of work.");
        else if (categories.Sum(category => category.Weight) is var sum && sum != 1)
            problems.Add(
                section.Line,
                string.Create(CultureInfo.InvariantCulture, $"The weights come to {Unit.Percent.Shown(sum):0.##########} %"),
                "They are the parts of one grade and add up to 100 %."
            );
        return categories;
    }

    private static Category? One(TableRow row, ProblemList problems)
    {
        var name = row.Required("Category", problems);
        var weight = row.Required("Weight", problems) is { } text ? Dimensions.Percent.Read(text, "The weight", Weights, problems) : null;
        var drop = row.Required("Drop lowest", problems) is { } typed ? Number.ReadWhole(typed, "`Drop lowest`", Drops, problems) : null;
        var counting = row.Required("Works count", problems) is { } word ? Counting(word, problems) : null;
        if (name is not { } called || weight is null || drop is null || counting is null)
            return null;
        if (called.Text.Contains(':', StringComparison.Ordinal))
            problems.Add(
                row.Line,
                $"The category `{called.Text}` has a colon in its name",
                "Leave it out: behind a colon stands a criterion in `Must be passed`."
            );
        if (drop > 0 && counting == CategoryCounting.ByPoints)
            problems.Add(
                row.Line,
                "The lowest is dropped where works count by points",
                "Let the works count alike, or drop none: of works of different worth, one more point could make another one the lowest and so lower the grade."
            );
        return new(called.Text, Unit.Percent.Held((decimal)weight), drop.Value, counting.Value);
    }

    private static CategoryCounting? Counting(Located word, ProblemList problems)
    {
        if (Countings.TryGetValue(word.Text.ToLowerInvariant(), out var counting))
            return counting;
        problems.Add(word.Line, $"`Works count` is `{word.Text}`", NearestWord.Advice(word.Text, [.. Countings.Keys]));
        return null;
    }
}
