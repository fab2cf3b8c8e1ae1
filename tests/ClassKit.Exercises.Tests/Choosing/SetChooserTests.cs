using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;

namespace ClassKit.Exercises.Tests.Choosing;

public sealed class SetChooserTests
{
    private static readonly IReadOnlyList<Exercise> Pool =
    [
        Make("yeast_a", "yeast", ExerciseLevel.Guided, 8, 3),
        Make("yeast_b", "yeast", ExerciseLevel.Open, 12, 4),
        Make("ice_a", "dough temperature", ExerciseLevel.Guided, 10, 5),
        Make("ice_b", "dough temperature", ExerciseLevel.Standard, 15, 6),
        Make("cost_a", "cost", ExerciseLevel.Standard, 10, 4),
    ];

    private static Exercise Make(string id, string skill, ExerciseLevel level, int minutes, decimal points) =>
        new(
            id,
            id,
            skill,
            level,
            minutes,
            "definition",
            "",
            [],
            [],
            [new("p", "?", CellFormula.Of("=1"), "g", Tolerance.Absolute(1), points, true, [])],
            []
        );

    private static IReadOnlyList<string> Ids(SetWish wish, ulong seed = 1) =>
        [.. SetChooser.Choose(Pool, wish, seed).Select(exercise => exercise.Id)];

    [Fact]
    public void Without_a_wish_all_are_taken_as_they_are() => Assert.Equal(Pool, SetChooser.Choose(Pool, SetWish.None, 1));

    [Fact]
    public void Named_exercises_come_alone_and_in_the_order_named() =>
        Assert.Equal(["cost_a", "yeast_b"], Ids(SetWish.None with { Exercises = ["cost_a", "yeast_b"] }));

    [Fact]
    public void Skills_and_levels_narrow_the_choice() =>
        Assert.Equal(
            ["yeast_a", "ice_a"],
            Ids(SetWish.None with { Skills = ["Yeast", "dough temperature"], Levels = [ExerciseLevel.Guided] })
        );

    [Fact]
    public void What_is_named_is_taken_besides_what_is_asked() =>
        Assert.Equal(["cost_a", "yeast_a", "yeast_b"], Ids(SetWish.None with { Exercises = ["cost_a"], Skills = ["yeast"] }));

    /// <summary>Of 8, 12, 10, 15 and 10 minutes: 35 is filled by 10 + 15 + 10 only; 30 by 8 + 12 + 10 or 10 + 12 + 8; 7 by none.</summary>
    [Theory]
    [InlineData(35, 35)]
    [InlineData(30, 30)]
    [InlineData(28, 28)]
    [InlineData(100, 55)]
    [InlineData(7, 0)]
    public void Time_is_filled_as_well_as_it_can_be(int minutes, int taken)
    {
        for (ulong seed = 0; seed < 5; seed++)
            Assert.Equal(taken, SetChooser.Choose(Pool, SetWish.None with { Minutes = minutes }, seed).Sum(exercise => exercise.Minutes));
    }

    [Fact]
    public void Points_and_time_both_are_kept()
    {
        var set = SetChooser.Choose(Pool, SetWish.None with { Minutes = 30, Points = 10 }, 3);

        Assert.InRange(set.Sum(exercise => exercise.Minutes), 20, 30);
        Assert.InRange(set.Sum(SetChooser.PointsOf), 8, 10);
    }

    [Fact]
    public void Of_sets_equally_full_the_one_with_more_skills_is_taken()
    {
        // 18 minutes: yeast_a with either of the two of 10 minutes. Never two of one skill.
        for (ulong seed = 0; seed < 5; seed++)
            Assert.Equal(
                2,
                SetChooser.Choose(Pool, SetWish.None with { Minutes = 18 }, seed).Select(exercise => exercise.Skill).Distinct().Count()
            );
    }

    [Fact]
    public void The_seed_decides_among_equals()
    {
        var sets = Enumerable.Range(0, 20).Select(seed => string.Join(' ', Ids(SetWish.None with { Minutes = 18 }, (ulong)seed))).ToList();

        Assert.Equal(["yeast_a cost_a", "yeast_a ice_a"], sets.Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(sets, Enumerable.Range(0, 20).Select(seed => string.Join(' ', Ids(SetWish.None with { Minutes = 18 }, (ulong)seed))));
    }
}
