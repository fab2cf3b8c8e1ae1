using System.Globalization;
using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Draws;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Tests;

/// <summary>
/// A balloon's volume changes by less than the tolerance between a cool and a warm room (Charles's law: 293 to 301 K is 2.7 %, and no dealt
/// temperature is further than half of that from every other), so that no fresh input tells a typed temperature from the cell.
/// </summary>
public sealed class TypedGivenTests
{
    private static readonly Exercise Exercise = new(
        "balloon",
        "Balloon",
        "chemical leavening",
        ExerciseLevel.Standard,
        5,
        "Charles's law",
        "How large does it get?",
        [new("cold", "Volume at 0 °C", "L", 1, 4, 0.5m), new("room", "Room temperature", "°C", 20, 28, 1)],
        [],
        [
            new(
                "warming",
                "Times the room at 0 °C",
                CellFormula.Of("=(room+273.15)/273.15"),
                "times",
                Tolerance.Relative(0.015),
                1,
                true,
                []
            ),
            new("volume", "How large?", CellFormula.Of("=cold*warming"), "L", Tolerance.Relative(0.015), 2, true, []),
        ],
        []
    );

    private static readonly DealtClass Class = Deal();

    private static DealtClass Deal()
    {
        var variant = VariantGenerator
            .ForFreshInputs(Exercise)
            .TryMake(new Dictionary<string, decimal> { ["cold"] = 2, ["room"] = 24 }, out _)!;
        return new(
            "lesson",
            "A lesson",
            "Test class",
            7,
            DoughTemperatureExercise.Marking,
            [Exercise],
            [new(new("ada-berg", "Ada Berg"), "workbooks/ada-berg.xlsx", [variant])]
        );
    }

    private static AnswerGrade Grade(string part, string warming, string volume) =>
        ClassGrader
            .Grade(Class, [new ReturnedBook(Class.Students[0]).Answer("warming", warming).Answer("volume", volume).As("ada.xlsx")])
            .Students[0]
            .Answers.Single(answer => answer.Part.Id == part);

    [Fact]
    public void A_typed_given_that_the_tolerance_would_hide_is_found_and_named()
    {
        var grade = Grade("warming", "=(24+273.15)/273.15+0*cold", "=cold*warming");

        Assert.Equal(Outcome.ValueOnly, grade.Outcome);
        Assert.Equal(24, Assert.Single(Assert.IsType<AnswerFinding.NotFollowing>(Assert.Single(grade.Findings)).Typed).Dealt);
    }

    [Theory]
    // 24 is typed, once as a share.
    [InlineData("=0*cold+(24+273.15)/273.15", true)]
    [InlineData("=0*cold+(2400%+273.15)/273.15", true)]
    // It stands in a cell reference and within longer numbers, and was not typed.
    [InlineData("=0*C24+297.15/273.15+0*cold", false)]
    [InlineData("=0*cold+297.15/273.15+0*1.24+0*240", false)]
    public void A_constant_is_said_to_have_a_given_typed_in_only_where_that_number_is_written(string warming, bool isTyped)
    {
        var grade = Grade("warming", warming, "=cold*warming");

        Assert.Equal(Outcome.ValueOnly, grade.Outcome);
        Assert.Equal(isTyped, Assert.IsType<AnswerFinding.NotFollowing>(Assert.Single(grade.Findings)).Typed.Count == 1);
    }

    [Fact]
    public void A_given_typed_into_one_long_formula_for_two_parts_is_found_too()
    {
        Assert.Equal(Outcome.ValueOnly, Grade("volume", "=(room+273.15)/273.15", "=cold*(24+273.15)/273.15").Outcome);
    }

    [Fact]
    public void Typing_is_paid_for_once()
    {
        Assert.Equal(Outcome.Sound, Grade("volume", "=(24+273.15)/273.15+0*cold", "=cold*warming").Outcome);
    }

    [Theory]
    [InlineData("=(room+273.15)/273.15")]
    [InlineData("=1+room/273.15")]
    [InlineData("=(room+273)/273")]
    [InlineData("=ROUND((room+273.15)/273.15,2)")]
    [InlineData("=ROUND(1+room*0.00366,3)")]
    public void Other_ways_to_the_same_number_within_the_tolerance_stay_sound(string formula)
    {
        Assert.Equal(Outcome.Sound, Grade("warming", formula, "=cold*warming").Outcome);
    }

    /// <summary>What makes the case: no room of the exercise is far enough from 24 °C for the tolerance to notice.</summary>
    [Fact]
    public void No_input_of_the_exercise_would_tell_by_the_tolerance_alone()
    {
        var dealt = Class.Students[0].AnswersOf("balloon")["warming"];

        Assert.All(Enumerable.Range(20, 9), room =>
            Assert.True(Exercise.Parts[0].Tolerance.Accepts((room + 273.15) / 273.15, dealt), room.ToString(CultureInfo.InvariantCulture))
        );
    }
}
