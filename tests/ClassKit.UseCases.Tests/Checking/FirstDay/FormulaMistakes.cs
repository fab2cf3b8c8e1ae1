using ClassKit.Content.Diagnostics;
using static ClassKit.UseCases.Tests.Checking.FirstDay.TeachingFolder;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>A bread.</summary>
internal static class FormulaMistakes
{
    public static IReadOnlyList<Mistake> All { get; } =
    [
        new(
            "two trays in one place of the oven",
            folder => folder.Change(Formula, "\n- Baking tray\n", "\n- 2 × Baking tray\n"),
            Formula,
            42,
            "A team has 2 tins or trays for it, and the method takes one place in the oven",
            "`2 oven places`"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "flour that does not come to 100",
            folder => folder.Change(Formula, "| All-purpose flour | 100 |", "| All-purpose flour | 90 |"),
            Formula,
            20,
            "The flour adds up to 90 %",
            "All flour together is 100 %"
        ),
        new(
            "an ingredient was misspelt",
            folder => folder.Change(Formula, "| Unsalted butter | 22 |", "| Unsalted buter | 22 |"),
            Formula,
            27,
            "`Unsalted buter`",
            "Did you mean `Unsalted butter`"
        ),
        new(
            "an ingredient that nobody knows",
            folder => folder.Change(Formula, "| Unsalted butter | 22 |", "| Golden dream spread | 22 |"),
            Formula,
            27,
            "`Golden dream spread` is not an ingredient",
            "`ingredients.csv`"
        ),
        new(
            "a decimal comma",
            folder => folder.Change(Formula, "| Fine salt | 1.2 |", "| Fine salt | 1,2 |"),
            Formula,
            30,
            "`1,2`",
            "Write a decimal point: 1.2"
        ),
        new(
            "grams in place of percentages",
            folder => folder.Change(Formula, "| All-purpose flour | 100 |", "| All-purpose flour | 500 g |"),
            Formula,
            26,
            "`500 g`, which is not a number",
            "Write the number alone"
        ),
        new(
            "the point slipped in the salt",
            folder => folder.Change(Formula, "| Fine salt | 1.2 |", "| Fine salt | 12 |"),
            Formula,
            30,
            "Fine salt is 12 % of the flour",
            "Did the point slip: 1.2?"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "powder as for ten times the flour",
            folder => folder.Change(Formula, "| Baking powder, double-acting | 5 |", "| Baking powder, double-acting | 50 |"),
            Formula,
            29,
            "50 % of the flour",
            "Did the point slip: 5?"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "soda beside powder and nothing sour",
            folder =>
                folder
                    .Change(Formula, "| Baking powder, double-acting | 5 |", "| Baking powder, double-acting | 5 |\n| Baking soda | 1.5 |")
                    .Change("prices.md", "| House sprinkle | jar", "| Baking soda | box | 500 g | 1,19 |\n| House sprinkle | jar"),
            Formula,
            20,
            "No acid of the formula meets its 1.5 % baking soda, which will taste soapy",
            "or add what is sour"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "the point slipped in the milk",
            folder => folder.Change(Formula, "| Whole milk | 62 |", "| Whole milk | 6.2 |"),
            Formula,
            20,
            "All that goes into the flour brings 9.",
            "Is a liquid missing"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "leavening by yeast, and none in it",
            folder => folder.Change(Formula, "leavening: chemical", "leavening: yeast"),
            Formula,
            3,
            "`leavening` is `yeast`, and there is no yeast or starter in the formula",
            "add to the formula what is missing"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a steamer that the class does not count",
            folder => folder.Change(Formula, "oven 210 °C", "steamer"),
            Lesson,
            null,
            "Milk scones is cooked in a steamer, and",
            "`equipment: [2 steamers]`"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a step without its time",
            folder => folder.Change(Formula, "**Rub in** (3–5 min, wait up to 15 min).", "**Rub in**."),
            Formula,
            47,
            "`Rub in` does not say how long it takes",
            "Write a step as"
        ),
        new(
            "an oven without its unit",
            folder => folder.Change(Formula, "oven 210 °C", "oven 210"),
            Formula,
            50,
            "`210`, without a unit",
            "`210 °C` or `210 °F`"
        ),
        new(
            "more of an ingredient than there is",
            folder =>
                folder.Change(
                    Formula,
                    "3. **Mix** (1–2 min, no wait).",
                    "3. **Mix** (3–4 min, kettle, boils half of the whole milk, cooks 60 % of the whole milk, burner, no wait)."
                ),
            Formula,
            42,
            "whole milk more than once",
            "parts of it that come to no more than all"
        ),
        new(
            "a part in parts of a hundred that are none",
            folder =>
                folder.Change(
                    Formula,
                    "3. **Mix** (1–2 min, no wait).",
                    "3. **Mix** (3–4 min, kettle, boils 140 % of the whole milk, no wait)."
                ),
            Formula,
            48,
            "`boils 140 % of the whole milk`",
            "above 0 and at most 100"
        ),
        new(
            "an oven in the other scale",
            folder => folder.Change(Formula, "oven 210 °C", "oven 410 °C"),
            Formula,
            50,
            "410 °C, hotter than most ovens get",
            "`oven 410 °F`"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a mass without its unit",
            folder => folder.Change(Formula, "piece mass: 60 g", "piece mass: 60"),
            Formula,
            8,
            "`piece mass` is `60`, without a unit",
            "`60 g`"
        ),
        new(
            "leavening by its trade name",
            folder => folder.Change(Formula, "leavening: chemical", "leavening: baking powder"),
            Formula,
            3,
            "`leavening` is `baking powder`",
            "steam, yeast, chemical"
        ),
        new(
            "a word in the brackets nobody knows",
            folder => folder.Change(Formula, "(5–10 min, unattended)", "(5–10 min, alone)"),
            Formula,
            51,
            "The brackets hold `alone`",
            "unattended"
        ),
        new(
            "no step in the oven",
            folder => folder.Change(Formula, "(14–17 min, oven 210 °C)", "(14–17 min)"),
            Formula,
            42,
            "No step says what the oven is set to",
            "oven 190 °C"
        ),
        new(
            "a food in the method that no list has",
            folder => folder.Change(Formula, "Pour {whole_milk} of milk in", "Pour {whole_milk} of milk and the egg in"),
            Formula,
            48,
            "`egg` is named here and stands in no list",
            "neither ordered nor declared"
        ),
        new(
            "steps without numbers",
            folder => folder.Change(Formula, "6. **Cool** (5", "**Cool** (5"),
            Formula,
            50,
            "there begins another, `Cool`",
            "a number of its own"
        ),
        new(
            "one of the ten lines is missing",
            folder => folder.Change(Formula, "- **Salt.** For flavour.\n", ""),
            Formula,
            73,
            "`Salt` is missing",
            "Add an item"
        ),
        new(
            "the line below a table's head is missing",
            folder => folder.Change(Formula, "| Ingredient | % |\n|---|---|\n", "| Ingredient | % |\n"),
            Formula,
            24,
            "does not belong to the table",
            "`|---|---|` below it"
        ),
    ];
}
