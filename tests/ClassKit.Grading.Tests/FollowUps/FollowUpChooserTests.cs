using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.FollowUps;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Tests.FollowUps;

public sealed class FollowUpChooserTests
{
    private static readonly Exercise Yeast = Of("rise", "yeast", ExerciseLevel.Standard, 10, "time_only");
    private static readonly Exercise Cost = Of("bun", "cost", ExerciseLevel.Standard, 12, "added");
    private static readonly Exercise GuidedYeast = Of("step_by_step", "yeast", ExerciseLevel.Guided, 8, "other");
    private static readonly Exercise KnowingYeast = Of("knowing", "yeast", ExerciseLevel.Standard, 9, "time_only");
    private static readonly Exercise PlainYeast = Of("plain", "yeast", ExerciseLevel.Standard, 9, "nothing_known");
    private static readonly Exercise Steam = Of("puff", "steam", ExerciseLevel.Guided, 8, "added");

    private static readonly IReadOnlyList<Exercise> Pool = [PlainYeast, KnowingYeast, GuidedYeast, Steam];

    private static Exercise Of(string id, string skill, ExerciseLevel level, int minutes, string misconception) =>
        new(
            id,
            id,
            skill,
            level,
            minutes,
            "made up",
            "{x}",
            [new("x", "X", "", 1, 9, 1)],
            [],
            [
                new(
                    "first",
                    "?",
                    CellFormula.Of("=x*2"),
                    "",
                    Tolerance.Absolute(0.1),
                    2,
                    true,
                    [new(misconception, CellFormula.Of("=x+2"), $"Not so: {misconception}.")]
                ),
                new("second", "?", CellFormula.Of("=x*3"), "", Tolerance.Absolute(0.1), 2, true, []),
            ],
            []
        );

    private static AnswerGrade Answer(Exercise exercise, int part, decimal points, string? misconception = null) =>
        new(
            exercise,
            exercise.Parts[part],
            Outcome.Incorrect,
            points,
            2,
            CellValue.Blank,
            1,
            null,
            misconception is null
                ? []
                :
                [
                    new AnswerFinding.WrongTurn(
                        exercise.Parts[part].Misconceptions.FirstOrDefault(known => known.Id == misconception)
                            ?? new(misconception, CellFormula.Of("=x"), "")
                    ),
                ],
            new Dictionary<string, double>()
        );

    private static IReadOnlyList<FollowUpExercise> Choose(
        int minutes,
        IReadOnlyList<Exercise> pool,
        params IReadOnlyList<AnswerGrade> answers
    )
    {
        var dealt = new DealtClass("l", "L", "C", 1, new("m", "M", 1, 1, 0, 0.6m), [Yeast, Cost], []);
        return FollowUpChooser.Choose(dealt, new(new("s-1", "S"), GradeStatus.Graded, "s-1.xlsx", answers, []), pool, minutes);
    }

    private static IEnumerable<string> Ids(IEnumerable<FollowUpExercise> chosen) => chosen.Select(one => one.Exercise.Id);

    [Fact]
    public void Nothing_lost_is_nothing_to_practise() =>
        Assert.Empty(Choose(60, Pool, Answer(Yeast, 0, 2), Answer(Yeast, 1, 2), Answer(Cost, 0, 2), Answer(Cost, 1, 2)));

    [Fact]
    public void A_skill_without_loss_is_left_alone_and_one_never_asked_is_not_begun() =>
        Assert.All(Choose(60, Pool, Answer(Yeast, 0, 0), Answer(Yeast, 1, 2), Answer(Cost, 0, 2), Answer(Cost, 1, 2)), one =>
            Assert.Equal("yeast", one.Exercise.Skill)
        );

    [Fact]
    public void Who_lost_half_of_an_exercise_gets_a_more_guided_one_first_and_the_same_again() =>
        Assert.Equal(["step_by_step", "rise"], Ids(Choose(60, Pool, Answer(Yeast, 0, 0), Answer(Yeast, 1, 2))));

    [Fact]
    public void Who_lost_less_gets_another_of_the_level_that_knows_the_misconception_met()
    {
        var chosen = Choose(60, Pool, Answer(Yeast, 0, 0.5m, "time_only"), Answer(Yeast, 1, 2));

        Assert.Equal(["knowing", "rise"], Ids(chosen).Order(StringComparer.Ordinal));
        Assert.Equal(["Not so: time_only."], chosen.SelectMany(one => one.Met).Select(met => met.Words));
        Assert.Equal([false, true], chosen.OrderBy(one => one.Exercise.Id, StringComparer.Ordinal).Select(one => one.IsAgain));
    }

    [Fact]
    public void The_skill_on_which_most_was_lost_comes_first_and_each_skill_has_its_turn_before_any_has_a_second()
    {
        IReadOnlyList<AnswerGrade> answers = [Answer(Yeast, 0, 1), Answer(Yeast, 1, 2), Answer(Cost, 0, 0), Answer(Cost, 1, 1)];

        Assert.Equal(["bun", "rise"], Ids(Choose(24, Pool, answers)));
        Assert.Equal(["bun"], Ids(Choose(20, Pool, answers)));
    }

    [Fact]
    public void One_exercise_is_chosen_however_little_time_there_is() =>
        Assert.Equal(["rise"], Ids(Choose(5, Pool, Answer(Yeast, 0, 0), Answer(Yeast, 1, 0))));

    [Fact]
    public void Without_a_pool_what_was_dealt_comes_again() =>
        Assert.Equal(["rise"], Ids(Choose(60, [], Answer(Yeast, 0, 0), Answer(Yeast, 1, 0))));

    /// <summary>The author calls the skill otherwise since it was dealt.</summary>
    [Fact]
    public void An_exercise_whose_skill_was_renamed_can_be_tried_again()
    {
        var renamed = Yeast with { Title = "renamed", Skill = "rising" };

        Assert.Equal(["renamed"], Choose(60, [renamed], Answer(Yeast, 0, 0), Answer(Yeast, 1, 0)).Select(one => one.Exercise.Title));
    }

    [Fact]
    public void Of_an_exercise_that_was_corrected_since_the_pools_version_counts()
    {
        var corrected = Yeast with { Title = "corrected" };

        Assert.Equal(["corrected"], Choose(60, [corrected], Answer(Yeast, 0, 0), Answer(Yeast, 1, 0)).Select(one => one.Exercise.Title));
    }
}
