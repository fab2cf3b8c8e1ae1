using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Guarantees;

namespace ClassKit.Exercises.Tests.Guarantees;

/// <summary>Small exercises with a fault of one kind, and what is said of one draw of theirs.</summary>
internal static class Asked
{
    public static Part Part(
        string id,
        string key,
        Tolerance? tolerance = null,
        string unit = "g",
        params (string Id, string Formula)[] misconceptions
    ) =>
        new(
            id,
            "?",
            CellFormula.Of(key),
            unit,
            tolerance ?? Tolerance.Absolute(1),
            1,
            true,
            [.. misconceptions.Select(one => new Misconception(one.Id, CellFormula.Of(one.Formula), "No."))]
        );

    /// <summary>An exercise on flour of 500 to 900 g and a share of it, with a wide band of effort.</summary>
    public static Exercise Exercise(params Part[] parts) =>
        new(
            "asked",
            "Asked",
            "any",
            ExerciseLevel.Standard,
            5,
            "definition",
            "{flour}",
            [new("flour", "Flour", "g", 500, 900, 50), new("share", "Share", "%", 0.10m, 0.30m, 0.05m)],
            [],
            parts,
            []
        )
        {
            Effort = new(0, 1000),
        };

    /// <summary>How a draw of so much flour and such a share breaks a rule; null if it may be dealt.</summary>
    public static Breach? Breach(Exercise exercise, decimal flour = 500, decimal share = 0.20m)
    {
        VariantGenerator.For(exercise).TryMake(new Dictionary<string, decimal> { ["flour"] = flour, ["share"] = share }, out var breach);
        return breach;
    }
}
