using System.Text.RegularExpressions;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Ingredients;

namespace ClassKit.Content.Tests.Ingredients;

/// <summary>The handbook of ingredients says what their reader knows, word for word, and its example is read.</summary>
public sealed partial class IngredientsHandbookTests : IDisposable
{
    private static readonly string Handbook = File.ReadAllText(
            Path.Combine(Repository.Root, "src", "ClassKit.Baking", "Ingredients", "README.md")
        )
        .ReplaceLineEndings("\n");

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_column_has_its_row() =>
        Assert.Equal(
            IngredientColumn.All.Select(column => $"| {column.Name} | {column.Means} |"),
            Row().Matches(Handbook).Select(match => match.Value).Skip(1)
        );

    [Fact]
    public void Every_word_for_what_only_the_label_tells_is_named() =>
        Assert.Contains($"Words for `label`: {string.Join(", ", IngredientDoubts.Words)}.", Handbook, StringComparison.Ordinal);

    [Fact]
    public void The_example_is_read()
    {
        var own = IngredientsReader.Read(_folder.Write("ingredients.csv", Example().Match(Handbook).Groups[1].Value));

        Assert.Empty(own.Problems);
        Assert.Equal(["emmer_flour", "milk_roll_improver"], own.Model!.Own.Select(ingredient => ingredient.Id));
    }

    [Fact]
    public void Every_starter_named_there_is_known() =>
        Assert.All(StarterName().Matches(Handbook).Select(match => match.Groups[1].Value), name =>
            Assert.Single(Pantry.Shipped.Called(name))
        );

    [GeneratedRegex(@"^\| .+ \|$", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex("```\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Example();

    [GeneratedRegex("`([^`]*, [0-9]+ %)`")]
    private static partial Regex StarterName();
}
