using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Exercises.Variants;

namespace ClassKit.Workbooks.Tests.Samples;

/// <summary>
/// A small class with three exercises: percent, grams, degrees; absolute and relative tolerances; a name with everything awkward in it.
/// </summary>
internal static class SampleClass
{
    private static readonly Exercise Hydration = new(
        "hydration",
        "Water for a griddle bun dough",
        "baker's percentages",
        ExerciseLevel.Standard,
        8,
        "common practice, no source",
        """
        A team mixes a dough for **griddle buns** with {flour} of flour at {hydration} hydration. The salt is {salt} of the flour.

        How much water and how much salt do they weigh out, and what does the whole dough weigh?
        """,
        [
            new Given("flour", "Flour", "g", 1000, 1500, 50),
            new Given("hydration", "Hydration, of the flour", "%", 0.60m, 0.75m, 0.01m),
            new Given("salt", "Salt, of the flour", "%", 0.018m, 0.022m, 0.001m),
        ],
        [],
        [
            new Part(
                "water",
                "How much water do they weigh out?",
                CellFormula.Of("=flour*hydration"),
                "g",
                Tolerance.Absolute(0.5),
                2,
                true,
                []
            ),
            new Part(
                "dough",
                "What does the whole dough weigh, with flour, water and salt?",
                CellFormula.Of("=flour+water+flour*salt"),
                "g",
                Tolerance.Absolute(0.5),
                3,
                true,
                []
            ),
            new Part(
                "share",
                "Which share of the dough is flour?",
                CellFormula.Of("=flour/dough"),
                "%",
                Tolerance.Absolute(0.005),
                1,
                false,
                []
            ),
        ],
        []
    );

    private static readonly Exercise WaterTemperature = new(
        "water_temperature",
        "How warm must the water be?",
        "dough temperature",
        ExerciseLevel.Guided,
        10,
        "common practice, no source",
        """
        The dough should leave the mixer at {wanted}. Three things bring their warmth:

        - the flour at {flour},
        - the room at {room},
        - the mixer, whose friction counts as {friction}.

        Use the rule of *three times the wanted temperature*.
        """,
        [
            new Given("wanted", "Wanted dough temperature", "°C", 24, 27, 0.5m),
            new Given("flour", "Flour temperature", "°C", 18, 24, 1),
            new Given("room", "Room temperature", "°C", 18, 28, 1),
            new Given("friction", "Friction factor", "°C", 12, 12, 0),
        ],
        [],
        [
            new Part(
                "base_temperature",
                "Three times the wanted temperature",
                CellFormula.Of("=3*wanted"),
                "°C",
                Tolerance.Absolute(0.05),
                1,
                true,
                []
            ),
            new Part(
                "water",
                "The water's temperature",
                CellFormula.Of("=base_temperature-flour-room-friction"),
                "°C",
                Tolerance.Absolute(0.05),
                2,
                true,
                []
            ),
        ],
        []
    );

    private static readonly Exercise Soda = new(
        "soda",
        "Soda and acid: do they balance each other out?",
        "chemical leavening",
        ExerciseLevel.Open,
        6,
        "common practice, no source",
        "A batch has {soda} of baking soda. The acid's neutralising value is {nv}.",
        [new Given("soda", "Baking soda", "g", 4, 9, 0.5m), new Given("nv", "Neutralising value of the acid", "", 50, 100, 1)],
        [],
        [
            new Part(
                "acid",
                "How much acid neutralises the soda?",
                CellFormula.Of("=100*soda/nv"),
                "g",
                Tolerance.Relative(0.01),
                2,
                true,
                []
            ),
        ],
        []
    );

    public static readonly IReadOnlyList<Exercise> Exercises = [Hydration, WaterTemperature, Soda];

    public static readonly MarkingScheme Marking = new("calculations", "Calculations", 0.5m, 1, 0, 0.6m);

    public static readonly DealtClass Dealt = new(
        "three_leavenings",
        "Three ways to rise",
        "Breads 1, autumn",
        7,
        Marking,
        Exercises,
        [
            Deal(new Student("ada-01", "Ada Example"), 1200, 0.65m),
            Deal(new Student("ben-02", "=Ben & Sons <\"Ü\">, the Baker"), 1350, 0.71m),
        ]
    );

    private static DealtStudent Deal(Student student, decimal flour, decimal hydration)
    {
        var water = (double)(flour * hydration);
        var dough = (double)(flour * (1 + hydration + 0.02m));
        Variant[] variants =
        [
            new(
                Hydration,
                new Dictionary<string, decimal>
                {
                    ["flour"] = flour,
                    ["hydration"] = hydration,
                    ["salt"] = 0.02m,
                },
                new Dictionary<string, double>
                {
                    ["water"] = water,
                    ["dough"] = dough,
                    ["share"] = (double)flour / dough,
                }
            ),
            new(
                WaterTemperature,
                new Dictionary<string, decimal>
                {
                    ["wanted"] = 25.5m,
                    ["flour"] = 20,
                    ["room"] = 23,
                    ["friction"] = 12,
                },
                new Dictionary<string, double> { ["base_temperature"] = 76.5, ["water"] = 21.5 }
            ),
            new(
                Soda,
                new Dictionary<string, decimal> { ["soda"] = 6.5m, ["nv"] = 80 },
                new Dictionary<string, double> { ["acid"] = 8.125 }
            ),
        ];
        return new(student, $"workbooks/{student.Id}.xlsx", variants);
    }
}
