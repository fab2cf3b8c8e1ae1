using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>Three exercises made up for these tests.</summary>
internal static class SampleExercises
{
    public static Exercise Hydration { get; } =
        new(
            "hydration",
            "Hydration of a country dough",
            "baker's percentage",
            ExerciseLevel.Guided,
            6,
            "common practice, no source",
            "Jürgen’s evening dough takes {flour} of flour at {hydration} hydration and {salt} salt, both on the flour.\n\nSalt goes in *after* the rest.",
            [
                new("flour", "Flour", "g", 800, 2400, 50),
                new("hydration", "Hydration", "%", 0.60m, 0.72m, 0.01m),
                new("salt", "Salt", "%", 0.02m, 0.02m, 0),
            ],
            [],
            [
                new(
                    "water",
                    "How much water?",
                    CellFormula.Of("=flour*hydration"),
                    "g",
                    Tolerance.Absolute(0.5),
                    1,
                    true,
                    [
                        new(
                            "of_dough",
                            CellFormula.Of("=flour*hydration/(1+hydration)"),
                            "You took the percentage of the whole dough. A baker’s percentage is always of the flour."
                        ),
                    ]
                ),
                new(
                    "dough",
                    "What does the dough weigh altogether?",
                    CellFormula.Of("=flour+water+flour*salt"),
                    "g",
                    Tolerance.Relative(0.005),
                    2,
                    true,
                    []
                ),
                new(
                    "share",
                    "What share of the dough is water?",
                    CellFormula.Of("=water/dough"),
                    "%",
                    Tolerance.Absolute(0.005),
                    1,
                    false,
                    []
                ),
            ],
            ["Flour is always 100 %.", "Multiply the flour by the hydration."]
        );

    public static Exercise WaterTemperature { get; } =
        new(
            "ddt",
            "Water for the right dough temperature",
            "dough temperature",
            ExerciseLevel.Standard,
            8,
            "trade practice, three-factor method",
            "The dough should leave the mixer at {desired}. The room has {room}, the flour {flour_temp}; the mixer adds {friction}.",
            [
                new("desired", "Desired dough temperature", "°C", 23, 27, 0.5m),
                new("room", "Room", "°C", 18, 26, 1),
                new("flour_temp", "Flour", "°C", 16, 24, 1),
                new("friction", "Friction", "°C", 6, 14, 1),
            ],
            [],
            [
                new(
                    "water_temp",
                    "How warm must the water be?",
                    CellFormula.Of("=3*desired-(room+flour_temp+friction)"),
                    "°C",
                    Tolerance.Absolute(0.25),
                    2,
                    true,
                    [
                        new(
                            "two_factors",
                            CellFormula.Of("=2*desired-(room+flour_temp+friction)"),
                            "You took the desired temperature twice. There are three factors, so it counts three times."
                        ),
                        new("no_friction", CellFormula.Of("=3*desired-(room+flour_temp)"), "The friction of the mixer is missing."),
                    ]
                ),
                new(
                    "ice",
                    "How much ice replaces part of 10 kg of tap water at 18 °C?",
                    CellFormula.Of("=10*MAX(0,18-water_temp)/(18+80)"),
                    "kg",
                    Tolerance.Absolute(0.02),
                    2,
                    true,
                    []
                ),
            ],
            []
        );

    public static Exercise Scaling { get; } =
        new(
            "rolls",
            "Rolls with a loss",
            "scaling and yield",
            ExerciseLevel.Open,
            5,
            "common practice, no source",
            "You need {pieces} rolls of {mass} each; {loss} of the dough stays in the bowl.",
            [
                new("pieces", "Rolls", "", 24, 96, 12),
                new("mass", "Dough per roll", "g", 50, 90, 5),
                new("loss", "Loss", "%", 0.02m, 0.05m, 0.005m),
            ],
            [],
            [
                new(
                    "mixed",
                    "How much dough must you mix?",
                    CellFormula.Of("=pieces*mass/(1-loss)"),
                    "g",
                    Tolerance.Relative(0.001),
                    2,
                    true,
                    [
                        new(
                            "added",
                            CellFormula.Of("=pieces*mass*(1+loss)"),
                            "You added the loss to the dough needed. The loss is a share of the dough mixed, so divide by one minus the loss."
                        ),
                    ]
                ),
            ],
            []
        );

    public static IReadOnlyList<Exercise> All { get; } = [Hydration, WaterTemperature, Scaling];
}
