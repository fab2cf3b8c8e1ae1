using System.Xml.Linq;
using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Solutions;

namespace ClassKit.Exercises.Tests.Solutions;

public sealed class WorkedSolutionTests
{
    private static readonly Part Friction = new(
        "friction",
        "By how much did the mixer warm it?",
        CellFormula.Of("=3*dough-(room+flour+water)"),
        "°F",
        Tolerance.Absolute(0.5),
        1,
        true,
        [new("two", CellFormula.Of("=2*dough-room"), "Three factors.")]
    );

    private static readonly Part Water = new(
        "water_temp",
        "How warm must the water be?",
        CellFormula.Of("=3*want-(room+flour)-friction"),
        "°F",
        Tolerance.Absolute(0.5),
        1,
        true,
        []
    );

    private static readonly Exercise Exercise = new(
        "ddt",
        "Water",
        "dough temperature",
        ExerciseLevel.Standard,
        5,
        "Pizza Today, June 2018",
        "",
        [
            Given("want", "Dough wanted", 80),
            Given("room", "Room", 75),
            Given("flour", "Flour", 65),
            Given("dough", "Trial dough", 80),
            Given("water", "Water", 65),
        ],
        [],
        [Friction, Water],
        []
    );

    private static readonly Dictionary<string, decimal> Dealt = Exercise.Givens.ToDictionary(given => given.Id, given => given.From);

    /// <summary>Desired 80 °F, flour 65, room 75, friction 35 give water of 65 °F: Pizza Today, June 2018, three-factor method.</summary>
    [Fact]
    public void A_solution_gives_the_published_water_temperature()
    {
        var solution = WorkedSolution.Of(Exercise, Water, Dealt, new Dictionary<string, double> { ["friction"] = 35 });

        Assert.Equal(65, solution.Result!.Value, 1e-9);
        Assert.Equal("3×dough wanted−(room+flour)−friction=water temperature", Words(solution.Method));
        Assert.Equal("3×80 °F−(75 °F+65 °F)−35 °F=65 °F", Words(solution.Numbers));
    }

    /// <summary>The same published example with the friction as a step that nobody is asked for.</summary>
    [Fact]
    public void Steps_are_worked_out_before_the_part_that_is_written_over_them()
    {
        var step = new WorkingStep("warming", "What the mixer adds", Friction.Key, "°F");
        var part = Water with
        {
            Key = CellFormula.Of("=3*want-(room+flour)-(3*dough-(room+flour+water))"),
            Written = CellFormula.Of("=3*want-(room+flour)-warming"),
        };
        var solution = WorkedSolution.Of(Exercise with { Steps = [step], Parts = [part] }, part, Dealt, new Dictionary<string, double>());

        Assert.Equal(65, solution.Result!.Value, 1e-9);
        Assert.Equal("What the mixer adds", Assert.Single(solution.Steps).What);
        Assert.Equal("3×trial dough−(room+flour+water)=warming", Words(solution.Steps[0].Method));
        Assert.Equal("3×80 °F−(75 °F+65 °F+65 °F)=35 °F", Words(solution.Steps[0].Numbers));
        Assert.Equal("3×dough wanted−(room+flour)−warming=water temperature", Words(solution.Method));
        Assert.Equal("3×80 °F−(75 °F+65 °F)−35 °F=65 °F", Words(solution.Numbers));
    }

    [Fact]
    public void A_students_own_earlier_answer_can_be_put_in() =>
        Assert.Equal(
            60,
            WorkedSolution.Of(Exercise, Water, Dealt, new Dictionary<string, double> { ["friction"] = 40 }).Result!.Value,
            1e-9
        );

    [Fact]
    public void Numbers_that_give_no_result_are_shown_without_one()
    {
        var part = Water with { Key = CellFormula.Of("=want/friction") };
        var solution = WorkedSolution.Of(Exercise, part, Dealt, new Dictionary<string, double> { ["friction"] = 0 });

        Assert.Null(solution.Result);
        Assert.DoesNotContain("=", Words(solution.Numbers), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_method_is_set_in_the_same_words() =>
        Assert.Equal("2×trial dough−room", Words(WorkedSolution.WrongMethodOf(Exercise, Friction.Misconceptions[0])));

    private static string Words(string mathMl) => XElement.Parse(mathMl).Value.Replace('\u00A0', ' ');

    private static Given Given(string id, string label, decimal value) => new(id, label, "°F", value, value, 0);
}
