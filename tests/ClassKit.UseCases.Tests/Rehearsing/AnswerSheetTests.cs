using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Draws;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Rehearsing;

public sealed class AnswerSheetTests
{
    /// <summary>Water at the freezing point is a right answer of nothing, which no factor moves.</summary>
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.5)]
    [InlineData(20)]
    public void A_slip_is_found_where_the_right_answer_is_nothing(double tolerance)
    {
        var exercise = new Exercise(
            "water",
            "Water",
            "dough temperature",
            ExerciseLevel.Standard,
            5,
            "Heat balance",
            "How cold?",
            [new("sum", "All together", "°C", 60, 90, 1), new("room", "Room", "°C", 20, 28, 1)],
            [],
            [new("water", "How cold is the water?", CellFormula.Of("=sum-3*room"), "°C", Tolerance.Absolute(tolerance), 1, true, [])],
            []
        );
        var variant = VariantGenerator
            .ForFreshInputs(exercise)
            .TryMake(new Dictionary<string, decimal> { ["sum"] = 72, ["room"] = 24 }, out _)!;
        var student = new DealtStudent(new("ada-berg", "Ada Berg"), "ada-berg.xlsx", [variant]);
        var dealt = SmallClass.Dealt with { Exercises = [exercise], Students = [student] };

        var slip = new AnswerSheet(dealt.LayOut().Of("water"), student).Answer(exercise.Parts[0], AnswerWay.Slip);

        Assert.Equal(0, variant.Answers["water"]);
        Assert.True(Math.Abs((double)slip.Content!) > tolerance);
    }
}
