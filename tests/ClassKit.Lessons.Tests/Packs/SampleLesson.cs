using ClassKit.Baking.Allergens;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Exercises.Marking;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Rubrics;

namespace ClassKit.Lessons.Tests.Packs;

/// <summary>Three small breads from the same mass of batter: popovers, yeast batter buns, buttermilk muffins.</summary>
internal static class SampleLesson
{
    public static LessonFormula Popovers { get; } =
        Bread(
            "popovers",
            Leavening.Steam,
            "popover",
            4,
            24,
            220,
            175,
            [
                Step("Warm", 3, 5) with
                {
                    Work = Warms("whole_milk", "unsalted_butter"),
                },
                Step("Mix", 5, 7),
                Step("Rest", 20, 40),
                Step("Heat the tin", 5, 8),
                Step("Fill", 2, 3),
                Step("Bake hot", 20, 20, 220),
                Step("Bake to dry", 13, 17, 175),
                Step("Pierce", 1, 2),
            ],
            ("ap_flour", 100),
            ("whole_milk", 200),
            ("whole_egg", 120),
            ("unsalted_butter", 12),
            ("salt", 2)
        );

    public static LessonFormula Buns { get; } =
        Bread(
            "buns",
            Leavening.Yeast,
            "bun",
            5,
            27,
            190,
            190,
            [
                Step("Warm", 3, 5) with
                {
                    Work = Warms("whole_milk", "unsalted_butter"),
                },
                Step("Mix", 5, 7),
                Step("First rise", 40, 50, 28),
                Step("Stir down", 1, 2),
                Step("Fill", 5, 8),
                Step("Second rise", 25, 30, 28),
                Step("Bake", 18, 20, 190),
                Step("Cool", 10, 15),
            ],
            ("ap_flour", 100),
            ("whole_milk", 70),
            ("whole_egg", 12),
            ("unsalted_butter", 8),
            ("sugar", 6),
            ("salt", 1.8),
            ("instant_yeast", 1.5)
        );

    public static LessonFormula Muffins { get; } =
        Bread(
            "muffins",
            Leavening.Chemical,
            "muffin",
            4,
            20,
            200,
            200,
            [
                Step("Prepare", 3, 5) with
                {
                    Work = Warms("buttermilk", "whole_egg") with
                    {
                        Heats = [.. Warms("buttermilk", "whole_egg").Heats, new(IngredientCatalog.Get("unsalted_butter"), HeatKind.Melted)],
                    },
                },
                Step("Dry", 3, 4),
                Step("Wet", 2, 3),
                Step("Mix", 1, 1),
                Step("Fill", 2, 3),
                Step("Bake", 16, 18, 200),
                Step("Cool", 5, 10),
            ],
            ("ap_flour", 100),
            ("buttermilk", 95),
            ("whole_egg", 20),
            ("unsalted_butter", 22),
            ("sugar", 18),
            ("baking_powder", 2.5),
            ("baking_soda", 0.8),
            ("salt", 1.2)
        );

    public static Lesson Lesson { get; } = Of(Buns, Popovers, Muffins);

    public static ClassProfile Class { get; } =
        new(
            "Baking 101",
            "Kitchen 2",
            24,
            8,
            6,
            150,
            Temperature.FromCelsius(22),
            0,
            Mass.FromGrams(1),
            Mass.FromGrams(0.1),
            4,
            [AllergenWords.Find("egg")!, AllergenWords.Find("sesame")!],
            UnitSystem.Both
        );

    public static Lesson Of(params LessonFormula[] formulas) =>
        new(
            "sample",
            "Sample",
            "",
            150,
            [],
            [],
            [],
            [],
            [],
            [],
            [],
            formulas,
            [],
            new MarkingScheme("marks", "Marks", 0.5m, 1, 0, 0.6m),
            new PracticalRubric("bench", "Bench", [], [], ""),
            "",
            ""
        );

    public static LessonFormula Bread(
        string id,
        Leavening leavening,
        string piece,
        double loss,
        double mix,
        double from,
        double to,
        MethodStep[] steps,
        params (string Ingredient, double Percent)[] lines
    ) =>
        new(
            new(id, id, leavening, [.. lines.Select(line => new FormulaLine(IngredientCatalog.Get(line.Ingredient), line.Percent))]),
            piece,
            Mass.FromGrams(60),
            loss,
            "",
            Temperature.FromCelsius(mix),
            Temperature.FromCelsius(from),
            Temperature.FromCelsius(to),
            steps,
            [],
            [],
            "",
            new("", "", "", "", "", "", "", "", "", "")
        );

    public static StepWork Warms(params string[] ids) =>
        StepWork.Usual with
        {
            Heats = [.. ids.Select(id => new IngredientHeat(IngredientCatalog.Get(id), HeatKind.Warmed))],
        };

    public static MethodStep Step(string name, int min, int max, double? celsius = null) =>
        new(name, "", min, max, celsius is { } degrees ? Temperature.FromCelsius(degrees) : null);
}
