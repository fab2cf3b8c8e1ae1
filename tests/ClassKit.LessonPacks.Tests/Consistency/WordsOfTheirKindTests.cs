using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Lessons;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.NamedFoods;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>
/// What is said of a bread is said of that bread: no food is named of it that its formula has not, and what lifts it is what it has.
/// </summary>
public sealed partial class WordsOfTheirKindTests
{
    private static readonly Dictionary<string, LessonFormula> Breads = new[] { "one-tin-three-lifts", "thin-air-quick-breads" }
        .SelectMany(lesson => LessonReader.Read(Repository.PathOf("lessons", lesson)).Model!.Formulas)
        .ToDictionary(formula => formula.Formula.Title);

    private static readonly string[] Between = ["Other breads", "Choose it when"];

    public static TheoryData<string> All => Kitchens.All;

    /// <summary>A soda bread without egg was said to set late, like egg: its words stood on it from another kind.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void A_column_of_the_comparison_names_no_food_that_its_bread_has_not(string kitchen)
    {
        var seen = 0;
        foreach (var table in Kitchens.Of(kitchen)["comparison.html"].QuerySelectorAll("table"))
        {
            var heads = table
                .QuerySelectorAll("thead th")
                .Select(head => Breads.Keys.FirstOrDefault(title => head.Words().StartsWith(title, StringComparison.Ordinal)))
                .ToList();
            // What was measured of other breads is of other breads, and choosing is between breads.
            foreach (
                var row in table
                    .QuerySelectorAll("tbody tr")
                    .Where(row => row.Children.Length == heads.Count && !Between.Any(row.Words().StartsWith))
            )
            {
                foreach (var (title, cell) in heads.Zip(row.Children).Where(pair => pair.First is not null))
                {
                    seen++;
                    Assert.Equal(
                        (title, row.Children[0].Words(), ""),
                        (title, row.Children[0].Words(), string.Join(", ", Foreign(cell.Words(), Breads[title!])))
                    );
                }
            }
        }
        Assert.True(seen > 50, $"{seen}");
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_card_says_that_its_bread_rises_by_what_is_weighed_for_it(string kitchen)
    {
        foreach (var card in Kitchens.Of(kitchen)["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var weighed = card.QuerySelector("table")!.QuerySelectorAll("tbody tr").Select(row => row.Children[0].Words()).ToList();
            var lifts = card.QuerySelector(".card-facts")!.Words().Split("rises by ")[1].Split(" ·")[0];
            Assert.Equal(lifts.Contains("soda", StringComparison.Ordinal), weighed.Contains("Baking soda"));
            Assert.Equal(
                lifts.Contains("powder", StringComparison.Ordinal),
                weighed.Exists(name => name.StartsWith("Baking powder", StringComparison.Ordinal))
            );
            Assert.Equal(
                lifts.Contains("yeast", StringComparison.Ordinal),
                weighed.Exists(name => name.Contains("yeast", StringComparison.Ordinal))
            );
            Assert.DoesNotContain(" or ", lifts, StringComparison.Ordinal);
            Assert.Empty(Foreign(card.QuerySelector(".card-why")!.Words(), Breads[card.QuerySelector("h2")!.Words()]));
        }
    }

    /// <summary>Milk was called the liquid at 78 %, where an exercise on the same bread counts the egg to 90 %.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void The_liquid_of_a_card_is_counted_with_the_egg_as_in_the_exercise(string kitchen)
    {
        foreach (var card in Kitchens.Of(kitchen)["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var poured = card.QuerySelector("table")!
                .QuerySelectorAll("tbody tr")
                .Where(row =>
                    IngredientCatalog.All.Single(known => known.Name == row.Children[0].Words()).Role
                        is IngredientRole.Liquid
                            or IngredientRole.Egg
                )
                .Sum(row => decimal.Parse(row.Children[1].Words(), CultureInfo.InvariantCulture));
            var told = card.QuerySelectorAll("li")
                .Single(item => item.Words().StartsWith("Liquid", StringComparison.Ordinal))
                .Words()
                .Split(" %")[0]
                .Split(' ')[^1];
            Assert.Equal(Math.Round(poured, 1, MidpointRounding.AwayFromZero), decimal.Parse(told, CultureInfo.InvariantCulture));
        }
    }

    private static IEnumerable<string> Foreign(string text, LessonFormula bread) =>
        Absent()
            .Replace(text, " ")
            .Split([';', ':', ',', '.'])
            .SelectMany(clause =>
                FoodMentions.In(
                    clause,
                    [.. Breads.Values.SelectMany(formula => new[] { formula.Formula.Title, formula.Piece, formula.Pieces })]
                )
            )
            .Where(food =>
                !food.IsListedIn(bread)
                && !(food.Words == "sugar" && bread.Formula.Lines.Any(line => line.Ingredient.Role == IngredientRole.Sugar))
            )
            .Select(food => food.Words);

    /// <summary>What is said not to be in it, and milk's own sugar.</summary>
    [GeneratedRegex(@"\b(without|no|instead of)\s+\w+|\bmilk sugar\b")]
    private static partial Regex Absent();
}
