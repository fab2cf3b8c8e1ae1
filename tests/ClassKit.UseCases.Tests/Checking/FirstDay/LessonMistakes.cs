using ClassKit.Content.Diagnostics;
using static ClassKit.UseCases.Tests.Checking.FirstDay.TeachingFolder;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>The lesson's text.</summary>
internal static class LessonMistakes
{
    public static IReadOnlyList<Mistake> All { get; } =
    [
        new(
            "no blank behind the signs of a heading",
            folder => folder.Change(Lesson, "## Objectives", "##Objectives"),
            Lesson,
            18,
            "`##Objectives` is no heading",
            "`## Objectives`"
        ),
        new(
            "a heading was misspelt",
            folder => folder.Change(Lesson, "## Vocabulary", "## Vocabulery"),
            Lesson,
            44,
            "`## Vocabulery` is not a section",
            "Did you mean `Vocabulary`"
        ),
        new(
            "cautions were taken out",
            folder =>
                folder.Put(
                    Lesson,
                    folder.Text(Lesson)[..folder.Text(Lesson).IndexOf("## Cautions", StringComparison.Ordinal)]
                        + folder.Text(Lesson)[folder.Text(Lesson).IndexOf("## Talking", StringComparison.Ordinal)..]
                ),
            Lesson,
            null,
            "no section `## Cautions`",
            "Add the line"
        ),
        new(
            "a caution without its source",
            folder => folder.Change(Lesson, " *Source: US FDA and CDC advice on raw flour, after the outbreak of 2016.*", ""),
            Lesson,
            56,
            "`Raw flour` names no source",
            "End it with where that is published"
        ),
        new(
            "a link was misspelt",
            folder => folder.Change(Lesson, "(exercises/how_wet.md)", "(exercises/howwet.md)"),
            Lesson,
            42,
            "There is no file",
            "Did you mean how_wet.md"
        ),
        new(
            "a link with other words than the title",
            folder => folder.Change(Lesson, "[How wet is it?]", "[Hydration]"),
            Lesson,
            42,
            "The link reads `Hydration`",
            "Use the file's title"
        ),
        new(
            "a link without its brackets",
            folder => folder.Change(Lesson, "- [How wet is it?](exercises/how_wet.md)", "- exercises/how_wet.md"),
            Lesson,
            42,
            "This item reads `exercises/how_wet.md`",
            "Write a link to the file"
        ),
        new(
            "talking of a step that the bread has not",
            folder => folder.Change(Lesson, "**Milk scones: Mix.**", "**Milk scones: Kneading.**"),
            Lesson,
            67,
            "has no step `Kneading`",
            "Weigh, Rub in, Mix"
        ),
        new(
            "a value was misspelt",
            folder => folder.Change(Lesson, "Teams measure how high they rise.", "They rise to {milk_scones.heigth}."),
            Lesson,
            16,
            "`{milk_scones.heigth}` stands for no computed value",
            "`milk_scones.height`"
        ),
        new(
            "a word without its bold",
            folder => folder.Change(Lesson, "- **Rubbing in.** Working", "- Rubbing in: Working"),
            Lesson,
            49,
            "This item reads `Rubbing in",
            "a name in bold"
        ),
        new(
            "a row of the table lacks a cell",
            folder =>
                folder.Change(
                    Lesson,
                    "| Low and tough | Worked too long | Stop while it still looks rough |",
                    "| Low and tough | Stop while it still looks rough |"
                ),
            Lesson,
            91,
            "The cell in the column `Cure` is empty",
            "Fill it in"
        ),
        new(
            "a bread of a series without its bread",
            folder => Series(folder, "**No powder** (without Baking powder, double-acting). Nothing in it."),
            Lesson,
            79,
            "This bread of a series reads `**No powder**",
            "- **Milk scones: No powder**"
        ),
        new(
            "a series after a step that the bread has not",
            folder => Series(folder, "**Milk scones: Held 20 min** (held 20 min after Kneading). What it loses."),
            Lesson,
            79,
            "Milk scones has no step `Kneading`",
            "Weigh, Rub in, Mix"
        ),
        new(
            "a series in which nothing is other",
            folder => Series(folder, "**Milk scones: Powder** (Baking powder, double-acting 5 %). As it is."),
            Lesson,
            79,
            "is what Milk scones has as written",
            "in what this bread differs"
        ),
        new(
            "two heats of fat and one fryer",
            folder =>
                folder
                    .Change(
                        TeachingFolder.Formula,
                        "5. **Bake** (14–17 min, oven 210 °C).",
                        "5. **Fry** (5–6 min, each 2 min, fryer 160 °C). Until set.\n6. **Fry again** (2–3 min, each 1 min, fryer 190 °C)."
                    )
                    .Change(
                        TeachingFolder.Formula,
                        "| House sprinkle | 1 g a piece | the tops |",
                        "| House sprinkle | 1 g a piece | the tops |\n| Sunflower oil | 1500 g a fryer | frying |"
                    )
                    .Change("prices.md", "| House sprinkle | jar", "| Sunflower oil | bottle | 1 L | 2,49 |\n| House sprinkle | jar")
                    .Change("class.md", "4 small scales]", "4 small scales, 1 fryer hot in 15 min]"),
            Lesson,
            null,
            "Fat is asked at 160 °C, 190 °C, My first class counts 1 fryer",
            "(10 min, unattended, fryer)"
        )
        {
            As = Weight.Noted,
        },
        new(
            "a tasting with no time to taste blind",
            folder => folder.Change(Lesson, "tasting: 15 min", "tasting: 10 min"),
            Lesson,
            null,
            "In 10 min nobody tastes blind",
            "`tasting: 15 min`"
        )
        {
            As = Weight.Noted,
        },
        new(
            "a lesson shorter than what is set aside",
            folder => folder.Change(Lesson, "period: 120 min", "period: 30 min"),
            Lesson,
            3,
            "take 35 min, and the lesson 30 min",
            "more time"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a series for which the oven is too small",
            folder =>
                Series(folder, "**Milk scones: Old powder** (Baking powder, double-acting at 50 % strength). What an old tin does.")
                    .Change("class.md", "ovens: 2", "ovens: 1")
                    .Change("class.md", "oven places: 4", "oven places: 3"),
            Lesson,
            null,
            "Not all is alike in the bench plan that the series holds against each other. “Bake” begins at ",
            "count more oven places"
        )
        {
            As = Weight.Doubtful,
        },
    ];

    private static TeachingFolder Series(TeachingFolder folder, string item) =>
        folder.Change(Lesson, "## Questions", $"## Series\n\n- {item}\n\n## Questions");
}
