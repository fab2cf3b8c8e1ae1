using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Marking;

namespace ClassKit.Grading.Tests;

/// <summary>An exercise around a published worked example, small enough to read and deep enough for follow-through.</summary>
/// <remarks>
/// Water temperature by the three-factor method: teaching material of a baking institute, common
/// practice: desired 75 °F, flour 65, room 65, friction 8 gives 225 - 138 = 87 °F.
/// Ice by heat balance in °F: ice = water × (tap - wanted) / (tap + 112), Koerner Co. ice table.
/// </remarks>
internal static class DoughTemperatureExercise
{
    public const string Id = "dough";

    /// <summary>The published example with a tap at 95 °F and 10 lb of water.</summary>
    public static IReadOnlyDictionary<string, decimal> Published { get; } =
        new Dictionary<string, decimal>
        {
            ["want"] = 75,
            ["flour"] = 65,
            ["room"] = 65,
            ["friction"] = 8,
            ["tap"] = 95,
            ["water"] = 10,
            ["share"] = 0.65m,
        };

    public static Exercise Exercise { get; } =
        new(
            Id,
            "Cool water",
            "dough temperature",
            ExerciseLevel.Guided,
            10,
            "see the remarks",
            "Find the water's temperature.",
            [
                new("want", "Dough wanted", "°F", 70, 80, 1),
                new("flour", "Flour", "°F", 60, 75, 1),
                new("room", "Room", "°F", 60, 75, 1),
                new("friction", "Friction", "°F", 4, 30, 1),
                new("tap", "Tap", "°F", 90, 110, 1),
                new("water", "Water", "lb", 5, 40, 1),
                new("share", "Share for the first dough", "%", 0.40m, 0.80m, 0.01m),
            ],
            [CellFormula.Of("=temperature<tap-3")],
            [
                Part("sum", "=flour+room+friction", "°F", Tolerance.Absolute(0.1)),
                Part(
                    "temperature",
                    "=3*want-sum",
                    "°F",
                    Tolerance.Absolute(0.1),
                    new Misconception(
                        "two_factors",
                        CellFormula.Of("=2*want-sum"),
                        "Three factors take three times the wanted temperature."
                    )
                ),
                Part(
                    "ice",
                    "=water*(tap-temperature)/(tap+112)",
                    "lb",
                    Tolerance.Relative(0.005),
                    new Misconception("melting_only", CellFormula.Of("=water*(tap-temperature)/144"), "The melted ice is warmed as well.")
                ),
                Part("ice_share", "=ice/water*share", "%", Tolerance.Relative(0.005)),
            ],
            []
        );

    public static MarkingScheme Marking { get; } = new("test", "Test marks", 0.4m, 1, 0, 0.6m);

    private static Part Part(string id, string key, string unit, Tolerance tolerance, params IReadOnlyList<Misconception> misconceptions) =>
        new(id, $"What is the {id}?", CellFormula.Of(key), unit, tolerance, 2, true, misconceptions);
}
