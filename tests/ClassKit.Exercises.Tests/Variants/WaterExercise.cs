using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Tests.Variants;

/// <summary>A small exercise for drawing: water for a dough. Any effort will do, so that its variants can be counted by hand.</summary>
internal static class WaterExercise
{
    public static Exercise Make(
        string constraint = "=water>=300",
        decimal flourTo = 900,
        string misconception = "=flour/hydration",
        double tolerance = 1
    ) =>
        new(
            "hydration",
            "Water",
            "baker's percentage",
            ExerciseLevel.Guided,
            5,
            "definition",
            "{flour} at {hydration}",
            [new("flour", "Flour", "g", 500, flourTo, 50), new("hydration", "Hydration", "%", 0.60m, 0.75m, 0.05m)],
            [CellFormula.Of(constraint)],
            [
                new(
                    "water",
                    "How much water?",
                    CellFormula.Of("=flour*hydration"),
                    "g",
                    Tolerance.Absolute(tolerance),
                    1,
                    true,
                    [new("divided", CellFormula.Of(misconception), "Multiply.")]
                ),
            ],
            []
        )
        {
            Effort = new(0, 1000),
        };
}
