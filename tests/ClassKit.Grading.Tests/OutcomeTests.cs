using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

public sealed class OutcomeTests
{
    private static ReturnedBook Book => new(Ada);

    [Fact]
    public void The_key_gives_the_published_temperature()
    {
        // Published: 225 - 138 = 87 °F.
        Assert.Equal(87, Ada.AnswersOf("dough")["temperature"]);
    }

    [Theory]
    [InlineData("=3*want-(flour+room+friction)")]
    [InlineData("=want+want+want-SUM(flour,room,friction)")]
    [InlineData("=ROUND(3*want-flour-room-friction,0)")]
    [InlineData("=IF(want>0,(want-friction/3)*3-flour-room,0)")]
    public void Any_formula_that_behaves_like_the_key_is_sound(string formula)
    {
        var grade = Grade(Book.Answer("temperature", formula), "temperature");

        Assert.Equal((Outcome.Sound, 2, 2), (grade.Outcome, grade.Points, grade.OutOf));
    }

    [Theory]
    [InlineData(87.0)]
    [InlineData("=225-138")]
    [InlineData("=3*75-flour-room-friction")]
    [InlineData("=IF(room=65,87,0)")]
    public void A_right_number_that_does_not_follow_the_inputs_earns_only_accuracy(object answer)
    {
        var grade = Grade(Book.Answer("temperature", answer), "temperature");

        Assert.Equal((Outcome.ValueOnly, 0.8m), (grade.Outcome, grade.Points));
    }

    [Fact]
    public void A_slip_costs_once_when_the_rest_follows_from_it()
    {
        // The learner adds 148 instead of 138: 77 °F follows, and the ice for 77 °F after it
        // (error carried forward, as mark-scheme glossaries have it, common practice, no source).
        var grades = Grade(
            Book.Answer("sum", 148).Answer("temperature", "=3*want-sum").Answer("ice", "=water*(tap-temperature)/(tap+112)")
        ).Answers;

        Assert.Equal(
            [Outcome.Incorrect, Outcome.FollowThrough, Outcome.FollowThrough, Outcome.Blank],
            grades.Select(grade => grade.Outcome)
        );
        Assert.Equal([0, 2, 2, 0], grades.Select(grade => grade.Points));
        Assert.Equal(77, grades[1].Value.Number);
        Assert.Equal(148, grades[1].OwnEarlierAnswers["sum"]);
    }

    [Fact]
    public void A_typed_number_that_follows_from_a_slip_earns_accuracy_for_following()
    {
        var grade = Grade(Book.Answer("sum", 148).Answer("temperature", 77), "temperature");

        Assert.Equal((Outcome.FollowThrough, 0.8m), (grade.Outcome, grade.Points));
    }

    [Fact]
    public void A_formula_on_a_typed_right_number_is_sound_since_the_typing_was_paid_for_before()
    {
        var grades = Grade(Book.Answer("sum", 138).Answer("temperature", "=3*want-sum")).Answers;

        Assert.Equal([Outcome.ValueOnly, Outcome.Sound], grades.Take(2).Select(grade => grade.Outcome));
    }

    [Fact]
    public void A_part_may_be_solved_in_one_go_while_earlier_ones_are_blank()
    {
        var grade = Grade(Book.Answer("ice", "=water*(tap-(3*want-flour-room-friction))/(tap+112)"), "ice");

        Assert.Equal(Outcome.Sound, grade.Outcome);
    }

    [Theory]
    [InlineData("=2*want-sum")]
    [InlineData("=2*want-(flour+room+friction)")]
    [InlineData(12)]
    public void A_known_wrong_turn_is_named(object answer)
    {
        var grade = Grade(Book.Answer("sum", "=flour+room+friction").Answer("temperature", answer), "temperature");

        Assert.Equal((Outcome.Misconception, "two_factors", 0.0m), (grade.Outcome, grade.Misconception?.Id, grade.Points));
    }

    [Fact]
    public void A_wrong_turn_on_an_own_earlier_slip_is_still_named()
    {
        var grade = Grade(Book.Answer("sum", 148).Answer("temperature", "=2*want-sum"), "temperature");

        Assert.Equal((Outcome.Misconception, "two_factors"), (grade.Outcome, grade.Misconception?.Id));
    }

    [Fact]
    public void A_formula_that_meets_a_wrong_turn_on_the_dealt_numbers_alone_is_not_called_one()
    {
        // 2·want - sum is 12 on the dealt numbers, and so is friction + 4.
        Assert.Equal(Outcome.Incorrect, Grade(Book.Answer("temperature", "=friction+4"), "temperature").Outcome);
    }

    [Fact]
    public void A_division_by_zero_is_incorrect_and_says_so()
    {
        var grade = Grade(Book.Answer("temperature", "=want/(room-flour)"), "temperature");

        Assert.Equal(Outcome.Incorrect, grade.Outcome);
        Assert.Equal([new AnswerFinding.ErrorValue(CellError.DivideByZero)], grade.Findings);
    }

    [Theory]
    [InlineData("=3*want-sum")]
    public void A_right_formula_on_a_blank_or_broken_cell_is_not_punished_again(string formula)
    {
        Assert.Equal(Outcome.FollowThrough, Grade(Book.Answer("temperature", formula), "temperature").Outcome);
        Assert.Equal(Outcome.FollowThrough, Grade(Book.Answer("sum", "=flour/0").Answer("temperature", formula), "temperature").Outcome);
        Assert.Equal(Outcome.FollowThrough, Grade(Book.Answer("sum", "138 °F").Answer("temperature", formula), "temperature").Outcome);
        Assert.Equal(Outcome.Incorrect, Grade(Book.Answer("temperature", "=4*want-sum"), "temperature").Outcome);
    }

    [Fact]
    public void A_right_formula_waiting_on_a_blank_carries_an_earlier_slip_too()
    {
        // The temperature is blank and the sum before it wrong: on either footing the ice formula shows its method.
        var grade = Grade(Book.Answer("sum", 148).Answer("ice", "=water*(tap-temperature)/(tap+112)"), "ice");

        Assert.Equal((Outcome.FollowThrough, 2), (grade.Outcome, grade.Points));
    }

    /// <summary>The formula works straight from the wrong sum: nothing of it waits for the blank that it goes round.</summary>
    [Fact]
    public void A_formula_that_goes_round_a_blank_carries_on_the_slip_before_it_and_lacks_nothing()
    {
        var round = Grade(Book.Answer("sum", 148).Answer("ice", "=water*(tap-(3*want-sum))/(tap+112)"), "ice");
        var waiting = Grade(Book.Answer("sum", 148).Answer("ice", "=water*(tap-temperature)/(tap+112)"), "ice");

        Assert.Equal((Outcome.FollowThrough, 2), (round.Outcome, round.Points));
        Assert.Equal("sum", Assert.Single(Assert.IsType<AnswerFinding.FollowsThrough>(round.Findings[0]).From).Id);
        Assert.Equal("temperature", Assert.Single(Assert.IsType<AnswerFinding.Waits>(waiting.Findings[0]).For).Id);
    }

    [Fact]
    public void A_number_that_only_follows_from_a_slip_through_a_blank_is_never_called_right()
    {
        // 225 - 130 is the tap's 95, so the blank ice would carry on as 0 and the share with it; the right share is 2.5 %.
        var grade = Grade(
            Book.Answer("sum", 130).Answer("temperature", "=3*want-sum").Answer("ice_share", "=ice/water*share"),
            "ice_share"
        );

        Assert.Equal(Outcome.FollowThrough, grade.Outcome);
    }

    [Fact]
    public void Nothing_is_blank_and_words_are_unreadable()
    {
        Assert.Equal(Outcome.Blank, Grade(Book, "sum").Outcome);
        Assert.Equal(Outcome.Blank, Grade(Book.Answer("sum", ""), "sum").Outcome);
        Assert.Equal(Outcome.Unreadable, Grade(Book.Answer("sum", "no idea"), "sum").Outcome);
        Assert.Equal(Outcome.Unreadable, Grade(Book.Answer("sum", true), "sum").Outcome);
    }

    [Theory]
    [InlineData("87 °F")]
    [InlineData("87,0")]
    [InlineData("30.55555555555556 °C")]
    [InlineData("≈ 87")]
    public void A_number_typed_as_text_is_read(string text)
    {
        Assert.Equal(Outcome.ValueOnly, Grade(Book.Answer("temperature", text), "temperature").Outcome);
    }

    [Fact]
    public void A_formula_we_cannot_evaluate_costs_nothing_and_is_flagged()
    {
        var grade = Grade(Book.Answer("temperature", "=LAMBDA(x,x+1)(86)"));
        var answer = grade.Answers[1];

        Assert.Equal((Outcome.Unsupported, 0, 0), (answer.Outcome, answer.Points, answer.OutOf));
        Assert.Contains(grade.Flags, flag => flag.Code == FlagCodes.FormulaToLookAt);
        Assert.Equal(6, grade.OutOf);
    }

    [Theory]
    [InlineData("=ice/water*share", Outcome.Sound)]
    [InlineData("=ice/water*share*100", Outcome.Sound)]
    [InlineData("2.51207729468599 %", Outcome.ValueOnly)]
    [InlineData(0.0251207729468599, Outcome.ValueOnly)]
    [InlineData(2.51207729468599, Outcome.ValueOnly)]
    [InlineData(25.1207729468599, Outcome.Incorrect)]
    public void A_percent_cell_takes_the_fraction_and_the_percentage(object answer, Outcome outcome)
    {
        // 65 % × (95 - 87)/(95 + 112) = 65 % × 8/207 = 2.512 %.
        var grade = Grade(
            Book.Answer("ice", "=water*(tap-(3*want-flour-room-friction))/(tap+112)").Answer("ice_share", answer),
            "ice_share"
        );

        Assert.Equal(outcome, grade.Outcome);
    }

    [Fact]
    public void An_overwritten_given_is_graded_as_dealt_and_flagged()
    {
        var grade = Grade(Book.Overwrite("flour", 100).Answer("sum", "=flour+room+friction"));

        Assert.Equal(Outcome.Sound, grade.Answers[0].Outcome);
        Assert.Equal(138, grade.Answers[0].Value.Number);
        var flag = Assert.IsType<Flag.GivenOverwritten>(Assert.Single(grade.Flags));
        Assert.Equal((65m, "100"), (flag.Dealt, flag.Found?.Text));
    }
}
