using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Guarantees;

namespace ClassKit.Exercises.Tests.Guarantees;

public sealed class VariantRuleTests
{
    private static T Found<T>(Breach? breach, string rule, Culprit culprit)
        where T : Breach
    {
        var found = Assert.IsType<T>(breach);
        Assert.Equal((rule, culprit), (found.Rule, found.Culprit));
        return found;
    }

    private static Culprit Salt { get; } = new(Part: "salt");

    [Fact]
    public void Every_rule_has_a_name_of_its_own()
    {
        var rules = VariantGenerator.For(Asked.Exercise(Asked.Part("salt", "=flour*share"))).Rules;

        Assert.Equal(rules.Count, rules.Select(rule => rule.Name).Distinct().Count());
    }

    [Fact]
    public void A_sound_draw_breaks_none() => Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share"))));

    [Fact]
    public void A_key_that_divides_by_nothing_gives_no_number() =>
        Assert.Equal(
            CellValue.FromError(CellError.DivideByZero),
            Found<Breach.NoNumber>(Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour/(share-0.2)"))), "keys give numbers", Salt).Given
        );

    [Fact]
    public void A_constraint_that_does_not_hold_is_named()
    {
        var found = Found<Breach.ConstraintBroken>(
            Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share")) with { Constraints = [CellFormula.Of("=salt>200")] }),
            "constraints hold",
            new(Constraint: "=salt>200")
        );
        Assert.True(found.IsComparison);
        Assert.Equal(("salt", 100), (Assert.Single(found.Answers).Part.Id, found.Answers[0].Answer));
    }

    [Fact]
    public void A_misconception_may_not_touch_the_right_answer()
    {
        var found = Found<Breach.CloseToRight>(
            Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share", misconceptions: [("near", "=flour*share+2")]))),
            "misconceptions apart from the right answer",
            Salt with
            {
                Misconception = "near",
            }
        );
        Assert.Equal((102, 100), (found.Mistaken, found.Right));
    }

    [Fact]
    public void A_misconception_just_beyond_both_tolerances_may_be_dealt() =>
        Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share", misconceptions: [("near", "=flour*share+2.001")]))));

    [Fact]
    public void Two_misconceptions_may_not_touch_each_other()
    {
        var found = Found<Breach.Alike>(
            Asked.Breach(
                Asked.Exercise(Asked.Part("salt", "=flour*share", misconceptions: [("one", "=flour*0.5"), ("two", "=flour/2+1")]))
            ),
            "misconceptions told apart",
            Salt with
            {
                Misconception = "two",
            }
        );
        Assert.Equal(("one", 250, 251), (found.Earlier.Id, found.OfEarlier, found.OfLater));
    }

    /// <summary>A slip of doubling in the first part makes a later share of 20 % out of 40 %: only there, not at other shares.</summary>
    [Fact]
    public void An_earlier_slip_carried_on_may_not_make_right_and_wrong_method_meet()
    {
        var exercise = Asked.Exercise(
            Asked.Part("salt", "=flour*share", misconceptions: [("doubled", "=2*flour*share")]),
            Asked.Part("both", "=3*salt+20", misconceptions: [("fixed", "=620+2*(salt-2*flour*share)")])
        );

        var found = Found<Breach.CloseAfterSlip>(
            Asked.Breach(exercise),
            "slips carried on stay apart",
            new(Part: "both", Misconception: "fixed")
        );
        Assert.Equal(("salt", "doubled", 620), (found.In.Id, found.Slip.Id, found.Mistaken));
        Assert.Null(Asked.Breach(exercise, 900, 0.10m));
    }

    /// <summary>
    /// Who takes the total for 1 gets the same by dividing and by multiplying, whatever the givens: no variant could be dealt if that
    /// counted.
    /// </summary>
    [Fact]
    public void What_comes_to_the_same_by_nature_is_let_pass() =>
        Assert.Null(
            Asked.Breach(
                Asked.Exercise(
                    Asked.Part("total", "=1+share", Tolerance.Absolute(0.001), "%", ("always_a_hundred", "=1")),
                    Asked.Part("part", "=flour/total", misconceptions: [("multiplied", "=flour*total")])
                )
            )
        );

    [Theory]
    [InlineData("=flour*1", "g", "flour")]
    [InlineData("=flour/25", "pieces", "share")]
    public void An_answer_that_stands_on_the_sheet_may_not_be_asked(string key, string unit, string copied) =>
        Assert.Equal(
            copied,
            Found<Breach.CopiesGiven>(Asked.Breach(Asked.Exercise(Asked.Part("salt", key, unit: unit))), "nothing to copy", Salt).From.Id
        );

    [Fact]
    public void An_earlier_answer_may_not_be_asked_again()
    {
        var found = Found<Breach.CopiesAnswer>(
            Asked.Breach(
                Asked.Exercise(Asked.Part("salt", "=flour*share"), Asked.Part("again", "=500-2*flour*share-200", Tolerance.Absolute(0.5)))
            ),
            "nothing to copy",
            new(Part: "again")
        );
        Assert.Equal(("salt", 100), (found.From.Id, found.Answer));
    }

    [Theory]
    [InlineData("g", 500.05, 900.05, 50, typeof(Breach.GivenTooFine))]
    [InlineData("g", 500.4, 900.4, 50, null)]
    [InlineData("°C", 500.05, 900.05, 50, typeof(Breach.GivenTooFine))]
    [InlineData("loaves", 10_001, 10_401, 50, typeof(Breach.GivenTooLong))]
    public void A_given_must_be_one_that_a_bench_can_weigh(string unit, decimal from, decimal to, decimal step, Type? kind)
    {
        var exercise = Asked.Exercise(Asked.Part("salt", "=flour*share"));
        var breach = Asked.Breach(exercise with { Givens = [new("flour", "Flour", unit, from, to, step), exercise.Givens[1]] }, from);

        Assert.Equal(kind, breach?.GetType());
        if (breach is not null)
            Assert.Equal(("givens fit the bench", new Culprit(Given: "flour")), (breach.Rule, breach.Culprit));
    }

    [Theory]
    [InlineData("=flour*share-99", AnswerFault.Nothing)]
    [InlineData("=flour*share-140", AnswerFault.Negative)]
    [InlineData("=flour*30000", AnswerFault.TooLarge)]
    public void An_answer_must_make_sense(string key, AnswerFault fault) =>
        Assert.Equal(
            fault,
            Found<Breach.OutOfReason>(Asked.Breach(Asked.Exercise(Asked.Part("salt", key))), "answers within reason", Salt).How
        );

    [Fact]
    public void A_temperature_may_be_below_zero() =>
        Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("ice", "=flour*share-140", Tolerance.Absolute(0.5), "°C"))));

    [Fact]
    public void An_answer_may_not_need_a_string_of_digits() =>
        Assert.Equal(
            6,
            Found<Breach.AnswerTooLong>(
                Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*10/7", Tolerance.Absolute(0.0001)))),
                "answers within reason",
                Salt
            ).Most
        );

    [Fact]
    public void An_answer_that_is_right_only_unrounded_cannot_be_written_down() =>
        Found<Breach.NotWritable>(
            Asked.Breach(Asked.Exercise(Asked.Part("salt", "=share/flour*3000/7", Tolerance.Absolute(0)))),
            "answers can be written down",
            Salt
        );

    /// <summary>A tolerance of exactly half the last place leaves both sides of a tie right: 12.5 g may be written 12 or 13.</summary>
    [Fact]
    public void A_tie_may_go_either_way() =>
        Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share+12.5", Tolerance.Absolute(0.5)))));

    [Fact]
    public void Going_on_from_a_printed_answer_must_stay_right() =>
        Found<Breach.WrongWhenRounded>(
            Asked.Breach(
                Asked.Exercise(
                    Asked.Part("factor", "=share*10/7", Tolerance.Relative(0.02), "%"),
                    Asked.Part("large", "=flour*factor*1000/7", Tolerance.Absolute(1))
                )
            ),
            "early rounding stays right",
            new(Part: "large")
        );

    /// <summary>700 × 25 % is 175 exactly; a tenth of it, 17.5, is a tie for ROUND.</summary>
    [Fact]
    public void A_key_that_rounds_may_not_stand_at_a_tie()
    {
        var exercise = Asked.Exercise(Asked.Part("buns", "=ROUND(flour*share/10,0)", Tolerance.Absolute(0), "buns"));

        Found<Breach.AtStep>(Asked.Breach(exercise, 700, 0.25m), "no tie nearby", new(Part: "buns"));
        Assert.Null(Asked.Breach(exercise, 650, 0.25m));
    }

    [Fact]
    public void A_key_that_rounds_in_steps_finer_than_the_tolerance_may() =>
        Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("salt", "=ROUND(flour*share/10,0)", Tolerance.Absolute(1))), 700, 0.25m));
}
