using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>Wrong answers that no misconception lists. What each has otherwise than the key is known, because it was written so.</summary>
public sealed class NearMissTests
{
    private static AnswerGrade Judged(string part, object answer, MarkingScheme? marking = null, JudgeRecord? recorded = null)
    {
        var dealt = marking is null ? Class : Class with { Marking = marking };
        var book = new ReturnedBook(dealt.Students[0]);
        foreach (var earlier in DoughTemperatureExercise.Exercise.Parts.TakeWhile(other => other.Id != part))
            book.Answer(earlier.Id, earlier.Key.Text);
        return new ClassGrader(dealt, recorded)
            .Judge(book.Answer(part, answer).As("a.xlsx"))
            .Grade!.Answers.Single(grade => grade.Part.Id == part);
    }

    private static AnswerFinding.NearMiss Miss(AnswerGrade grade)
    {
        Assert.Equal(Outcome.Incorrect, grade.Outcome);
        return Assert.IsType<AnswerFinding.NearMiss>(grade.Findings[0]);
    }

    private static string Key(string part) => DoughTemperatureExercise.Exercise.Parts.Single(one => one.Id == part).Key.Text[1..];

    [Fact]
    public void Divided_by_two_as_well_is_what_it_looks_like()
    {
        var edit = Assert.IsType<KeyEdit.TakenIn>(Assert.Single(Miss(Judged("sum", $"=({Key("sum")})/2")).Edits));
        Assert.Equal("2", edit.Term);
    }

    [Fact]
    public void A_typed_number_is_named_only_if_nothing_else_gives_it()
    {
        var half = Class.Students[0].AnswersOf(DoughTemperatureExercise.Id)["ice"] / 2;
        Assert.False(Miss(Judged("ice", Math.Round(half, 3, MidpointRounding.AwayFromZero))).IsShown);
        // Two digits are as well somebody's guess.
        Assert.IsType<AnswerFinding.NotRight>(Judged("ice", 77.0).Findings[0]);
    }

    [Fact]
    public void It_earns_what_a_misconception_earns_unless_the_scheme_says_otherwise()
    {
        var answer = $"=({Key("sum")})/2";
        Assert.Equal(0.5m, Judged("sum", answer, Class.Marking with { MisconceptionShare = 0.25m }).Points);
        Assert.Equal(0.2m, Judged("sum", answer, Class.Marking with { MisconceptionShare = 0.25m, NearMissShare = 0.1m }).Points);
        Assert.Equal(0, Judged("sum", answer, Class.Marking with { MisconceptionShare = 0.25m, NearMissShare = 0 }).Points);
    }

    /// <summary>
    /// Divided by the water's temperature, worked out again: whoever is told that its cell was taken in would look for it in vain.
    /// </summary>
    [Fact]
    public void What_comes_to_the_same_by_another_way_is_not_said_to_use_a_cell_that_it_does_not() =>
        Assert.IsType<AnswerFinding.NotRight>(Judged("ice_share", $"=({Key("ice_share")})/({Key("temperature")})").Findings[0]);

    /// <summary>
    /// Twice the flour and no friction: it comes to the same as the flour in place of the friction, and yet the student would look for the
    /// second flour in vain.
    /// </summary>
    [Theory]
    [InlineData("=2*flour+room", typeof(AnswerFinding.NotRight))]
    [InlineData("=flour+room+flour", typeof(AnswerFinding.NearMiss))]
    public void A_cell_that_a_formula_does_not_have_is_not_said_to_be_used_instead(string formula, Type finding) =>
        Assert.IsType(finding, Judged("sum", formula).Findings[0]);

    [Fact]
    public void With_the_cell_itself_it_is_said() =>
        Assert.Equal(
            "temperature",
            Assert.IsType<KeyEdit.TakenIn>(Assert.Single(Miss(Judged("ice_share", $"=({Key("ice_share")})/temperature")).Edits)).Term
        );

    [Fact]
    public void A_class_judged_before_there_were_near_misses_is_judged_without() =>
        Assert.IsType<AnswerFinding.NotRight>(Judged("sum", $"=({Key("sum")})/2", recorded: new(2, [])).Findings[0]);

    [Fact]
    public void A_formula_that_gives_the_same_whatever_is_given_shows_nothing() =>
        Assert.IsType<AnswerFinding.NotRight>(Judged("sum", "=want/want*17.25").Findings[0]);
}
