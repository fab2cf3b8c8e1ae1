using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Marking;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Practising;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Tests.Practising;

/// <summary>
/// Practice before work is handed in shows answers, so it must not show those of the work; and one exercise that cannot be practised costs
/// nobody the others.
/// </summary>
public sealed class NotGivenAwayTests
{
    private static readonly MarkingScheme Marking = new("m", "Marks", 0.5m, 1, 0, 0.6m);
    private static readonly Roster Class = new(
        "Class",
        [.. Enumerable.Range(1, 6).Select(number => new Student($"student-{number}", $"Student {number}"))]
    );
    private static readonly OptionList Causes = new(
        "causes",
        ChoiceKind.Match,
        [new("cold", "Cold."), new("old", "Old."), new("wet", "Wet.")]
    );

    /// <summary>Its numbers differ and its answer does not.</summary>
    private static readonly Exercise WithOneAnswer = Of(
        "faults",
        1,
        9,
        new("why", "Why?", CellFormula.Of("=2"), "", Tolerance.Absolute(0), 1, false, []) { Choice = new(Causes, "Because.") }
    );

    private static readonly Exercise WithFewVariants = Of(
        "few",
        1,
        4,
        new("twice", "Twice?", CellFormula.Of("=2*trays"), "", Tolerance.Absolute(0), 1, true, [])
    );

    private static readonly Exercise WithMany = Of(
        "many",
        1,
        900,
        new("thrice", "Three times?", CellFormula.Of("=3*trays"), "", Tolerance.Absolute(0), 1, true, [])
    );

    private static Exercise Of(string id, decimal from, decimal to, Part part) =>
        new(
            id,
            id,
            "yeast",
            ExerciseLevel.Open,
            5,
            "common practice, no source",
            "{trays}",
            [new("trays", "Trays", "", from, to, 1)],
            [],
            [part],
            []
        );

    private static PracticeSet Set(params IReadOnlyList<Exercise> exercises) => new("set", "Set", exercises, Marking);

    private static PracticeMade? Practice(out string? refusal, params IReadOnlyList<Exercise> exercises)
    {
        var dealt = Dealer.Deal("set", "Set", exercises, Marking, Class, 5);
        var made = MakePractice.Run(new(Set(exercises), 5) { Avoid = NumbersToAvoid.OfAnyone(dealt.Class!) }, Run.Unwatched);
        refusal = made.Problems is [var first, ..] ? first.Found : null;
        return made.Model;
    }

    [Fact]
    public void An_exercise_with_everybodys_answer_is_not_practised_before_it_is_handed_in()
    {
        var made = Practice(out _, WithOneAnswer, WithMany)!;

        Assert.Equal(["many"], made.Dealt.Exercises.Select(exercise => exercise.Id));
        Assert.Equal(new(WithOneAnswer, GivesAway: true), Assert.Single(PracticeFiles.Notes(made).OfType<Note.LeftOutOfPractice>()).What);
    }

    [Fact]
    public void An_exercise_whose_variants_were_all_dealt_costs_nobody_the_others()
    {
        var made = Practice(out _, WithFewVariants, WithMany)!;

        Assert.Equal(["many"], made.Dealt.Exercises.Select(exercise => exercise.Id));
        Assert.Equal(new(WithFewVariants, GivesAway: false), Assert.Single(made.LeftOut));
    }

    [Fact]
    public void Nothing_left_is_said()
    {
        Assert.Null(Practice(out var refusal, WithOneAnswer, WithFewVariants));
        Assert.Equal("Nothing is left to practise", refusal);
    }

    [Fact]
    public void Practice_of_anything_is_free_where_nothing_waits()
    {
        var made = MakePractice.Run(new(Set(WithOneAnswer, WithFewVariants), 5), Run.Unwatched).Model!;

        Assert.Equal(2, made.Dealt.Exercises.Count);
        Assert.Empty(made.LeftOut);
    }

    /// <summary>After grading the answers are no secret, and other numbers would make no other problem.</summary>
    [Fact]
    public void One_answer_is_practised_again_after_grading_however_few_numbers_there_are()
    {
        var single = WithOneAnswer with { Givens = [new("trays", "Trays", "", 3, 3, 1)] };
        var dealt = Dealer.Deal("set", "Set", [single], Marking, Class, 5).Class!;

        var again = Dealer.Deal("set", "Set", [single], Marking, Class, 6, new(DealPurpose.FollowUp, NumbersToAvoid.OfEach(dealt)));

        Assert.NotNull(again.Class);
        Assert.Empty(again.Shared);
    }
}
