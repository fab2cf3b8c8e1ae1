using ClassKit.Exercises;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>Wrong numbers that are right but for one small thing, and right ones with something typed into the formula.</summary>
public sealed class SlipTests
{
    private static readonly MarkingScheme Generous = DoughTemperatureExercise.Marking with { UnitSlipShare = 0.5m, RoundingSlipShare = 0.75m };

    private static ReturnedBook Book => new(Ada);

    [Theory]
    [InlineData("ice", "=16*water*(tap-temperature)/(tap+112)", "right in oz; this cell asks for lb")]
    [InlineData("ice", "=water*(tap-temperature)/(tap+112)*0.45359237", "right in kg; this cell asks for lb")]
    [InlineData("temperature", "=(3*want-sum-32)/1.8", "right in °C; this cell asks for °F")]
    [InlineData("ice", "=1000*water*(tap-temperature)/(tap+112)", "1000 times what it should be")]
    [InlineData("ice", "=water*(tap-temperature)/(tap+112)/10", "1/10 of what it should be")]
    public void The_right_quantity_in_another_unit_is_told_apart_and_earns_what_the_scheme_says(string part, string formula, string note)
    {
        var strict = Grade(Solved().Answer(part, formula), part);
        var generous = Grade(Solved().Answer(part, formula), part, Generous);

        Assert.Equal((Outcome.Incorrect, 0), (strict.Outcome, strict.Points));
        Assert.Equal((Outcome.Incorrect, 1), (generous.Outcome, generous.Points));
        Assert.Contains(note, strict.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_typed_number_in_another_unit_earns_no_share_for_the_method()
    {
        // 87 °F is 30.56 °C.
        var grade = Grade(Solved().Answer("temperature", 30.56), "temperature", Generous);

        Assert.Contains("right in °C", grade.Note, StringComparison.Ordinal);
        Assert.Equal(2 * 0.5m * 0.4m, grade.Points);
    }

    [Theory]
    [InlineData("ice", "=ROUND(water*(tap-temperature)/(tap+112),1)", "rounded to one decimal, which is more than this part allows")]
    [InlineData("ice_share", "=ROUND(ice,1)/water*share", "an earlier answer was rounded to one decimal before it was used")]
    public void Rounding_too_much_or_too_early_is_told_apart_and_earns_what_the_scheme_says(string part, string formula, string note)
    {
        var strict = Grade(Solved().Answer(part, formula), part);
        var generous = Grade(Solved().Answer(part, formula), part, Generous);

        Assert.Equal((Outcome.Incorrect, 0), (strict.Outcome, strict.Points));
        Assert.Equal((Outcome.Incorrect, 1.5m), (generous.Outcome, generous.Points));
        Assert.Contains(note, strict.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_on_an_own_earlier_slip_is_still_told_apart()
    {
        // 148 for 138 gives 77 °F, which is 25 °C.
        var grade = Grade(Book.Answer("sum", 148).Answer("temperature", "=(3*want-sum-32)/1.8"), "temperature");

        Assert.Contains("right in °C", grade.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_that_only_looks_like_a_slip_on_the_dealt_inputs_is_none_in_a_formula()
    {
        // 870 is ten times 87, but the formula is about the room and follows nothing of the kind.
        var grade = Grade(Solved().Answer("temperature", "=870+(room-65)"), "temperature");

        Assert.Equal(Outcome.Incorrect, grade.Outcome);
        Assert.DoesNotContain("times", grade.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("temperature", "=3*75-flour-room-friction", "you typed 75\u00A0°F, where the sheet has Dough wanted in ")]
    [InlineData("temperature", "=3*want-65-65-friction", "you typed 65\u00A0°F, where the sheet has Flour in ")]
    [InlineData("ice", "=water*(tap-(3*75-flour-room-friction))/(tap+112)", "you typed 75\u00A0°F, where the sheet has Dough wanted in ")]
    [InlineData("ice_share", "=ice/water*65%", "you typed 65\u00A0%, where the sheet has Share for the first dough in ")]
    [InlineData("temperature", "=IF(room=65,87,0)", "it comes to something else than the right method does")]
    public void A_given_typed_into_a_formula_is_named_with_its_cell(string part, string formula, string note)
    {
        var grade = Grade(Solved().Answer(part, formula), part);

        Assert.Equal(Outcome.ValueOnly, grade.Outcome);
        Assert.Contains(note, grade.Note, StringComparison.Ordinal);
    }

    /// <summary>Every part right, so that a test spoils just one.</summary>
    private static ReturnedBook Solved() => Book
        .Answer("sum", "=flour+room+friction").Answer("temperature", "=3*want-sum")
        .Answer("ice", "=water*(tap-temperature)/(tap+112)").Answer("ice_share", "=ice/water*share");

    private static AnswerGrade Grade(ReturnedBook book, string part, MarkingScheme? marking = null) =>
        ClassGrader.Grade(Class with { Marking = marking ?? Class.Marking }, [book.As("ada.xlsx")]).Students[0].Answers.Single(answer => answer.Part.Id == part);
}
