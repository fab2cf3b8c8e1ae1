using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Tests.Lessons;

/// <summary>
/// What a bread's file says that can be read and is most likely not meant. Limits are common practice and from memory, as the checks say
/// themselves.
/// </summary>
public sealed partial class MostLikelyNotMeantTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("steam", "| Water | 62 |", "Bake", "oven 200 °C", "")]
    [InlineData("yeast", "| Water | 62 |\n| Instant yeast | 1.5 |", "Proof", "32 °C, unattended", "")]
    [InlineData(
        "yeast",
        "| Water | 62 |",
        "Bake",
        "oven 200 °C",
        "`leavening` is `yeast`, and there is no yeast or starter in the formula"
    )]
    [InlineData("yeast", "| Water | 40 |\n| Bread flour sourdough starter, 100 % | 40 |", "Bake", "oven 200 °C", "")]
    [InlineData(
        "chemical",
        "| Water | 62 |\n| Instant yeast | 1.5 |",
        "Bake",
        "oven 200 °C",
        "`leavening` is `chemical`, and there is no soda or powder in the formula"
    )]
    [InlineData("chemical", "| Water | 62 |\n| Baking powder, double-acting | 5 |", "Bake", "oven 200 °C", "")]
    [InlineData("none", "| Water | 62 |", "Bake", "oven 200 °C", "")]
    [InlineData(
        "none",
        "| Water | 62 |\n| Instant yeast | 1.5 |",
        "Bake",
        "oven 200 °C",
        "`leavening` is `none`, and there is yeast or starter in the formula"
    )]
    [InlineData(
        "none",
        "| Water | 62 |\n| Baking powder, double-acting | 5 |",
        "Bake",
        "oven 200 °C",
        "`leavening` is `none`, and there is soda or powder in the formula"
    )]
    [InlineData(
        "yeast",
        "| Water | 62 |\n| Instant yeast | 1.5 |",
        "Bake",
        "oven 200 °C, kettle, boils water",
        "With what is boiled the mix comes to"
    )]
    [InlineData(
        "yeast",
        "| Instant yeast | 1.5 |\n| Fine salt | 2 |",
        "Bake",
        "oven 200 °C",
        "All that goes into the flour brings 0.1 % of water"
    )]
    [InlineData(
        "yeast",
        "| Water | 6 |\n| Instant yeast | 1.5 |",
        "Bake",
        "oven 200 °C",
        "All that goes into the flour brings 6.1 % of water"
    )]
    [InlineData(
        "yeast",
        "| Water | 62 |\n| Instant yeast | 10 |",
        "Bake",
        "oven 200 °C",
        "Instant yeast is 10 % of the flour, and more than 5 % is unusual"
    )]
    [InlineData("yeast", "| Water | 62 |\n| Fresh (compressed) yeast | 10 |", "Bake", "oven 200 °C", "")]
    [InlineData(
        "yeast",
        "| Water | 62 |\n| Instant yeast | 1 |\n| Fine salt | 5 |",
        "Bake",
        "oven 200 °C",
        "Fine salt is 5 % of the flour"
    )]
    [InlineData(
        "steam",
        "| Water | 62 |",
        "Bake",
        "oven 40 °F",
        "The oven of `Bake` is at 4 °C (40 °F), and nothing bakes below some 60 °C"
    )]
    [InlineData("steam", "| Water | 62 |", "Bake", "oven 19 °C", "The oven of `Bake` is at 19 °C, and nothing bakes below some 60 °C")]
    [InlineData("steam", "| Water | 62 |", "Dry", "oven 150 °F", "")]
    [InlineData("steam", "| Water | 62 |", "Fry", "fryer 280 °C", "The fat of `Fry` is at 280 °C")]
    [InlineData("steam", "| Water | 62 |", "Fry", "fryer 350 °C", "The fat of `Fry` is at 350 °C")]
    [InlineData("steam", "| Water | 62 |", "Fry", "fryer 108 °C", "The fat of `Fry` is at 108 °C")]
    [InlineData("steam", "| Water | 62 |", "Fry", "fryer 180 °C", "")]
    [InlineData("steam", "| Water | 62 |", "Cook", "griddle 475 °C", "`Cook` is at 475 °C, hotter than most pans and griddles get")]
    [InlineData("steam", "| Water | 62 |", "Cook", "pan 475 °F", "")]
    [InlineData("steam", "| Water | 62 |", "Bake", "pizza oven 425 °C", "")]
    [InlineData(
        "yeast",
        "| Water | 62 |\n| Instant yeast | 1.5 |",
        "Proof",
        "52 °C, unattended",
        "`Proof` is at 52 °C, and yeast begins to die"
    )]
    [InlineData(
        "yeast",
        "| Water | 62 |\n| Instant yeast | 1.5 |",
        "Mix** (5 min). Stir.\n1. **Rise** (60 min, unattended). Covered.\n1. **Fold",
        "scale",
        "`Fold` is named like mixing and stands behind a rise"
    )]
    [InlineData(
        "yeast",
        "| Water | 62 |\n| Instant yeast | 1.5 |",
        "Mix** (5 min). Stir.\n1. **Rise** (60 min, unattended). Covered.\n1. **Fold",
        "mixes",
        ""
    )]
    public void It_is_doubted_and_what_is_usual_is_not(string leavening, string rows, string step, string conditions, string doubt)
    {
        var reading = Read(leavening, rows, $"{step}** (10–12 min, {conditions})");

        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        if (doubt.Length == 0)
            Assert.Empty(reading.Doubts);
        else
            Assert.Contains(doubt, Assert.Single(reading.Doubts).Found, StringComparison.Ordinal);
    }

    /// <summary>The bread that a new folder begins with, its formula and one step changed.</summary>
    private Reading<LessonFormula> Read(string leavening, string rows, string step)
    {
        var begun = File.ReadAllText(Repository.PathOf("src/ClassKit.Content/Starting/lessons/milk-scones/formulas/milk_scones.md"))
            .ReplaceLineEndings("\n");
        foreach (var (from, to) in new[] { ("| All-purpose flour | 100 |", "## Greasing"), ("## Greasing", "## Method") })
            begun = begun.Replace(
                begun[begun.IndexOf(from, StringComparison.Ordinal)..begun.IndexOf(to, StringComparison.Ordinal)],
                "",
                StringComparison.Ordinal
            );
        var bake = step.Contains("unattended", StringComparison.Ordinal) ? "1. **Bake** (14–17 min, oven 210 °C). Until golden." : "";
        begun = MethodOf()
            .Replace(
                begun,
                $"| All-purpose flour | {(rows.Contains("starter", StringComparison.Ordinal) ? 80 : 100)} |\n{rows}\n{(step.Contains("fryer", StringComparison.Ordinal) ? Fat : "")}\n## Method\n\n1. **Weigh** (4–6 min, scale). Everything.\n1. **{step}. As it says.\n{bake}\n\n## Equipment"
            );
        return LessonFormulaReader.Read(
            _folder.Write(
                "bun.md",
                begun
                    .Replace("leavening: chemical", $"leavening: {leavening}", StringComparison.Ordinal)
                    .Replace("- Bowl\n", "- Bowl\n- Pan\n", StringComparison.Ordinal)
            )
        );
    }

    private const string Fat =
        "\n## Greasing and dusting\n\n| Ingredient | Amount | For |\n|---|---|---|\n| Sunflower oil | 1500 g a batch | the fryer |\n";

    [GeneratedRegex("## Method.*?## Equipment", RegexOptions.Singleline)]
    private static partial Regex MethodOf();
}
