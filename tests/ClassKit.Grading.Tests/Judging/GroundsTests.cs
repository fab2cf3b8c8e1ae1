using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Tests.Judging;

/// <summary>Every ground by its name holds what the name says, whatever else an answer may stand on.</summary>
/// <remarks>650 g of water on 1,000 g of flour are 65 %, with 2 % of salt 67 %; on fresh inputs 300 g on 500 g are 60 %, and 62 %.</remarks>
public sealed class GroundsTests
{
    private static readonly Exercise Exercise = new(
        "hydration",
        "Hydration",
        "baker's percentages",
        ExerciseLevel.Guided,
        5,
        "definition",
        "What is in the dough?",
        [
            new("flour", "Flour", "g", 500, 1000, 100),
            new("water", "Water", "g", 300, 650, 50),
            new("salt", "Salt", "%", 0.02m, 0.02m, 0.01m),
        ],
        [],
        [Part("share", "=water/flour"), Part("both", "=share+salt")],
        []
    );

    private static Part Share => Exercise.Parts[0];

    private static Part Both => Exercise.Parts[1];

    [Fact]
    public void A_typed_answer_stands_on_what_is_there_alone()
    {
        var grounds = On(held: 0.5, Wrong(0.5), follows: false, usesEarlier: false);

        Assert.True(grounds.AreOne);
        Assert.Equal([grounds.AsItStands], grounds.All);
        Assert.Null(grounds.Own ?? grounds.OnRight ?? grounds.OnRightAsRead);
    }

    [Fact]
    public void Behind_right_answers_all_grounds_are_one()
    {
        var grounds = On(held: null, new(Outcome.Sound, Reading.Plain(0.65), true, new AnswerFinding.Right()));

        Assert.True(grounds.AreOne);
        Assert.Equal([grounds.AsItStands], grounds.All);
    }

    [Fact]
    public void A_formula_behind_a_wrong_answer_is_tried_on_it_and_on_the_right_one()
    {
        var grounds = On(held: 0.5, Wrong(0.5));

        Assert.Equal([grounds.AsItStands, grounds.Own!, grounds.OnRight!], grounds.All);
        Assert.Equal(grounds.All.Skip(1), grounds.BesideAsItStands);
        // Held against the right answers, whatever stands before.
        Assert.Equal([0.67, 0.62], Near(grounds.AsItStands.Expected));
        Assert.Empty(grounds.AsItStands.Instead[0]);
        // A typed number is carried on as it is on the inputs dealt; fresh inputs do not reach it, and the right ones stand for it.
        Assert.Equal([0.65, 0.60], Near([.. grounds.Own!.Instead.Select(instead => (double?)instead["share"])]));
        Assert.Equal([0.65, 0.60], Near([.. grounds.OnRight!.Instead.Select(instead => (double?)instead["share"])]));
        Assert.Null(grounds.OnRightAsRead);
    }

    [Fact]
    public void What_goes_round_the_earlier_answer_has_no_right_one_put_before_it()
    {
        var grounds = On(held: 0.5, Wrong(0.5), usesEarlier: false);

        Assert.Equal([grounds.AsItStands, grounds.Own!], grounds.All);
        Assert.Null(grounds.OnRight);
    }

    [Fact]
    public void Behind_50_in_a_percent_cell_the_right_answer_is_also_written_as_65()
    {
        var grounds = On(held: 50, new(Outcome.Incorrect, new(0, IsScaled: true, 0.5), false, new AnswerFinding.NotRight()));

        Assert.Equal([grounds.AsItStands, grounds.Own!, grounds.OnRight!, grounds.OnRightAsRead!], grounds.All);
        Assert.Equal([0.65, 0.60], Near([.. grounds.OnRight!.Instead.Select(instead => (double?)instead["share"])]));
        Assert.Equal([65, 60], Near([.. grounds.OnRightAsRead!.Instead.Select(instead => (double?)instead["share"])]));
    }

    [Fact]
    public void A_ground_is_the_same_one_however_often_it_is_asked_for()
    {
        var grounds = On(held: 0.5, Wrong(0.5));

        Assert.Same(grounds.Own, grounds.Own);
        Assert.Same(grounds.OnRight, grounds.OnRight);
        Assert.All(grounds.All.Zip(grounds.All), pair => Assert.Same(pair.First, pair.Second));
    }

    /// <summary>What stands before a part is remembered: an answer that came in later would be judged as though it were not there.</summary>
    [Fact]
    public void No_answer_comes_in_once_what_stands_before_a_later_part_was_asked_for()
    {
        var trial = Trial(1000, 650);
        trial.Take(Share, 0.5);

        Assert.Equal(0.5, trial.HeldBefore(Both)["share"]);
        Assert.Throws<InvalidOperationException>(() => trial.Take(Share, 0.6));
        trial.Take(Both, null, 0.7);
        Assert.False(trial.Held.ContainsKey("both"));
        Assert.Equal(0.7, trial.Meant["both"]);
    }

    private static Part Part(string id, string key) =>
        new(id, $"What is {id}?", CellFormula.Of(key), "%", Tolerance.Absolute(0.001), 1, true, []);

    private static Judgement Wrong(double value) => new(Outcome.Incorrect, Reading.Plain(value), false, new AnswerFinding.NotRight());

    /// <param name="held">What stands in the earlier cell under every trial; null for what is right there.</param>
    /// <param name="judgement">What was found of it.</param>
    /// <param name="follows">True for a formula.</param>
    /// <param name="usesEarlier">True for one that points at the earlier cell.</param>
    private static Grounds On(double? held, Judgement judgement, bool follows = true, bool usesEarlier = true)
    {
        IReadOnlyList<Trial> trials = [Trial(1000, 650), Trial(500, 300)];
        foreach (var trial in trials)
            trial.Take(Share, held ?? trial.Right.Answers[Share.Id]);
        var judged = new JudgedAnswer(judgement, HoldsNumber: true, IsReached: held is null, IsTelling: true, [Share]);
        return new(
            Both,
            trials,
            new(Both, Exercise, new Dictionary<string, JudgedAnswer> { [Share.Id] = judged }),
            follows,
            usesEarlier,
            JudgeRules.Current
        );
    }

    private static Trial Trial(decimal flour, decimal water) =>
        new(
            new(
                new Variant(
                    Exercise,
                    new Dictionary<string, decimal>
                    {
                        ["flour"] = flour,
                        ["water"] = water,
                        ["salt"] = 0.02m,
                    },
                    new Dictionary<string, double> { ["share"] = (double)(water / flour), ["both"] = (double)(water / flour + 0.02m) }
                )
            )
        );

    private static IEnumerable<double> Near(IEnumerable<double?> numbers) => numbers.Select(number => Math.Round(number!.Value, 12));
}
