using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Guarantees;

namespace ClassKit.Exercises.Tests.Guarantees;

public sealed class VariantRuleTests
{
    private static void AssertBreach(Breach? breach, string rule, string because, string seen = "")
    {
        Assert.NotNull(breach);
        Assert.Equal(rule, breach.Rule);
        Assert.Contains(because, breach.Because, StringComparison.Ordinal);
        Assert.Contains(seen, breach.Seen.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.EndsWith(".", breach.WhatToDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_rule_has_a_name_of_its_own_and_says_what_it_promises()
    {
        var rules = VariantGenerator.For(Asked.Exercise(Asked.Part("salt", "=flour*share"))).Rules;

        Assert.Equal(rules.Count, rules.Select(rule => rule.Name).Distinct().Count());
        Assert.All(rules, rule => Assert.EndsWith(".", rule.Promise, StringComparison.Ordinal));
    }

    [Fact]
    public void A_sound_draw_breaks_none() => Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share"))));

    [Fact]
    public void A_key_that_divides_by_nothing_gives_no_number() => AssertBreach(
        Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour/(share-0.2)"))), "keys give numbers", "`=flour/(share-0.2)`, gives no number", "#DIV/0!");

    [Fact]
    public void A_constraint_that_does_not_hold_is_named() => AssertBreach(
        Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share")) with { Constraints = [CellFormula.Of("=salt>200")] }),
        "constraints hold", "the constraint `=salt>200` does not hold");

    [Fact]
    public void A_misconception_may_not_touch_the_right_answer() => AssertBreach(
        Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share", misconceptions: [("near", "=flour*share+2")]))),
        "misconceptions apart from the right answer", "`near` of part `salt`", "102 g, and 100 g is right within 1 g");

    [Fact]
    public void A_misconception_just_beyond_both_tolerances_may_be_dealt() =>
        Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share", misconceptions: [("near", "=flour*share+2.001")]))));

    [Fact]
    public void Two_misconceptions_may_not_touch_each_other() => AssertBreach(
        Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share", misconceptions: [("one", "=flour*0.5"), ("two", "=flour/2+1")]))),
        "misconceptions told apart", "`one` and `two` of part `salt`", "250 g and 251 g");

    /// <summary>A slip of doubling in the first part makes a later share of 20 % out of 40 %: only there, not at other shares.</summary>
    [Fact]
    public void An_earlier_slip_carried_on_may_not_make_right_and_wrong_method_meet()
    {
        var exercise = Asked.Exercise(
            Asked.Part("salt", "=flour*share", misconceptions: [("doubled", "=2*flour*share")]),
            Asked.Part("both", "=3*salt+20", misconceptions: [("fixed", "=620+2*(salt-2*flour*share)")]));

        AssertBreach(Asked.Breach(exercise), "slips carried on stay apart", "after the misconception `doubled` in part `salt`, the misconception `fixed` of part `both`", "620 g");
        Assert.Null(Asked.Breach(exercise, 900, 0.10m));
    }

    /// <summary>Who takes the total for 1 gets the same by dividing and by multiplying, whatever the givens: no variant could be dealt if that counted.</summary>
    [Fact]
    public void What_comes_to_the_same_by_nature_is_let_pass() => Assert.Null(Asked.Breach(Asked.Exercise(
        Asked.Part("total", "=1+share", Tolerance.Absolute(0.001), "%", ("always_a_hundred", "=1")),
        Asked.Part("part", "=flour/total", misconceptions: [("multiplied", "=flour*total")]))));

    [Theory]
    [InlineData("=flour*1", "g", "the given `flour`")]
    [InlineData("=flour/25", "pieces", "the given `share`")]
    public void An_answer_that_stands_on_the_sheet_may_not_be_asked(string key, string unit, string copied) => AssertBreach(
        Asked.Breach(Asked.Exercise(Asked.Part("salt", key, unit: unit))), "nothing to copy", $"part `salt` is answered by copying {copied}");

    [Fact]
    public void An_earlier_answer_may_not_be_asked_again() => AssertBreach(
        Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share"), Asked.Part("again", "=500-2*flour*share-200", Tolerance.Absolute(0.5)))),
        "nothing to copy", "part `again` is answered by copying the answer to part `salt`", "100 g stands on the sheet");

    [Theory]
    [InlineData("g", 500.05, 900.05, 50, "no instrument shows `flour` so finely")]
    [InlineData("g", 500.4, 900.4, 50, null)]
    [InlineData("°C", 500.05, 900.05, 50, "no instrument shows `flour` so finely")]
    [InlineData("loaves", 10_001, 10_401, 50, "`flour` has more digits than a person would write down")]
    public void A_given_must_be_one_that_a_bench_can_weigh(string unit, decimal from, decimal to, decimal step, string? because)
    {
        var exercise = Asked.Exercise(Asked.Part("salt", "=flour*share"));
        var breach = Asked.Breach(exercise with { Givens = [new("flour", "Flour", unit, from, to, step), exercise.Givens[1]] }, from);

        if (because is null) Assert.Null(breach);
        else AssertBreach(breach, "givens fit the bench", because);
    }

    [Theory]
    [InlineData("=flour*share-99", "is nothing within its tolerance")]
    [InlineData("=flour*share-140", "is less than nothing")]
    [InlineData("=flour*30000", "is a million or more")]
    public void An_answer_must_make_sense(string key, string because) =>
        AssertBreach(Asked.Breach(Asked.Exercise(Asked.Part("salt", key))), "answers within reason", because);

    [Fact]
    public void A_temperature_may_be_below_zero() =>
        Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("ice", "=flour*share-140", Tolerance.Absolute(0.5), "°C"))));

    [Fact]
    public void An_answer_may_not_need_a_string_of_digits() => AssertBreach(
        Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*10/7", Tolerance.Absolute(0.0001)))), "answers within reason", "needs more than 6 digits", "714.2857 g");

    [Fact]
    public void An_answer_that_is_right_only_unrounded_cannot_be_written_down() => AssertBreach(
        Asked.Breach(Asked.Exercise(Asked.Part("salt", "=share/flour*3000/7", Tolerance.Absolute(0)))), "answers can be written down", "cannot be written down");

    /// <summary>A tolerance of exactly half the last place leaves both sides of a tie right: 12.5 g may be written 12 or 13.</summary>
    [Fact]
    public void A_tie_may_go_either_way() => Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("salt", "=flour*share+12.5", Tolerance.Absolute(0.5)))));

    [Fact]
    public void Going_on_from_a_printed_answer_must_stay_right() => AssertBreach(
        Asked.Breach(Asked.Exercise(
            Asked.Part("factor", "=share*10/7", Tolerance.Relative(0.02), "%"),
            Asked.Part("large", "=flour*factor*1000/7", Tolerance.Absolute(1)))),
        "early rounding stays right", "part `large` goes wrong");

    /// <summary>700 × 25 % is 175 exactly; a tenth of it, 17.5, is a tie for ROUND.</summary>
    [Fact]
    public void A_key_that_rounds_may_not_stand_at_a_tie()
    {
        var exercise = Asked.Exercise(Asked.Part("buns", "=ROUND(flour*share/10,0)", Tolerance.Absolute(0), "buns"));

        AssertBreach(Asked.Breach(exercise, 700, 0.25m), "no tie nearby", "stands at a tie or a limit");
        Assert.Null(Asked.Breach(exercise, 650, 0.25m));
    }

    [Fact]
    public void A_key_that_rounds_in_steps_finer_than_the_tolerance_may() => Assert.Null(
        Asked.Breach(Asked.Exercise(Asked.Part("salt", "=ROUND(flour*share/10,0)", Tolerance.Absolute(1))), 700, 0.25m));
}
