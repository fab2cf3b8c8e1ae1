using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Tests.Variants;

namespace ClassKit.Exercises.Tests.Choosing;

public sealed class SpreadChooserTests
{
    private static readonly IReadOnlyList<Student> Class =
    [
        .. Enumerable.Range(1, 20).Select(number => new Student($"s-{number}", $"Student {number}")),
    ];

    // Of yeast three alike and one that takes much longer; of cost two alike and one worth more.
    private static readonly IReadOnlyList<Exercise> Pool =
    [
        Of("yeast_1", "yeast", 10),
        Of("yeast_2", "yeast", 10),
        Of("yeast_3", "yeast", 11),
        Of("yeast_4", "yeast", 25),
        Of("yeast_open", "yeast", 10, ExerciseLevel.Open),
        Of("cost_1", "cost", 10),
        Of("cost_2", "cost", 9),
        Of("cost_dear", "cost", 10, points: 5),
    ];

    private static readonly SetWish TwoOfThem = new([], [], [ExerciseLevel.Standard], 20, 4);

    private static Exercise Of(string id, string skill, int minutes, ExerciseLevel level = ExerciseLevel.Standard, decimal points = 2)
    {
        var water = WaterExercise.Make();
        return water with { Id = id, Skill = skill, Minutes = minutes, Level = level, Parts = [water.Parts[0] with { Points = points }] };
    }

    private static IEnumerable<IReadOnlyList<Exercise>> SetsOf(Spread spread) =>
        spread.Sets.Values.Select(set => (IReadOnlyList<Exercise>)[.. set.Select(id => Pool.Single(exercise => exercise.Id == id))]);

    [Fact]
    public void Every_set_weighs_the_same_in_points_skills_levels_and_nearly_in_minutes()
    {
        var spread = SpreadChooser.Choose(Pool, TwoOfThem, Class, 3)!;

        var kinds = SetsOf(spread)
            .Select(set => string.Join(", ", set.Select(exercise => $"{exercise.Skill} {exercise.Level}").Order(StringComparer.Ordinal)))
            .Distinct();
        Assert.Single(kinds);
        Assert.All(SetsOf(spread), set => Assert.Equal(4, set.Sum(SetChooser.PointsOf)));
        Assert.All(SetsOf(spread), set => Assert.InRange(set.Sum(exercise => exercise.Minutes), 18, 20));
        Assert.All(SetsOf(spread), set => Assert.Equal(set.Count, set.Distinct().Count()));
        Assert.InRange(spread.Different, 2, 6);
    }

    [Fact]
    public void Sets_are_dealt_equally_often_and_neighbours_on_the_roster_get_different_ones()
    {
        var sets = SpreadChooser.Choose(Pool, TwoOfThem, Class, 3)!.Sets;
        var inOrder = Class.Select(student => string.Join(' ', sets[student.Id])).ToList();

        var times = inOrder.GroupBy(set => set).Select(set => set.Count()).ToList();
        Assert.InRange(times.Max() - times.Min(), 0, 1);
        Assert.DoesNotContain(inOrder.Zip(inOrder.Skip(1)), pair => pair.First == pair.Second);
    }

    [Fact]
    public void What_is_wanted_by_name_is_in_every_set()
    {
        var spread = SpreadChooser.Choose(Pool, TwoOfThem with { Exercises = ["cost_1"], Skills = ["yeast"] }, Class, 1)!;

        Assert.All(SetsOf(spread), set => Assert.Contains(set, exercise => exercise.Id == "cost_1"));
        Assert.True(spread.Different > 1);
    }

    [Fact]
    public void Where_there_is_nothing_to_exchange_everyone_gets_the_same()
    {
        var spread = SpreadChooser.Choose(Pool, SetWish.None with { Levels = [ExerciseLevel.Open] }, Class, 1)!;

        Assert.Equal(1, spread.Different);
        Assert.All(spread.Sets.Values, set => Assert.Equal(["yeast_open"], set));
    }

    [Fact]
    public void Sets_are_balanced_by_what_can_be_expected_once_enough_is_known_of_all_that_can_be_in_one()
    {
        // One of three alike is much harder: sets with it are left out, or all others are.
        var expected = Pool.ToDictionary(exercise => exercise.Id, exercise => exercise.Id == "yeast_2" ? 0.4 : 1.5);

        var balanced = SpreadChooser.Choose(Pool, TwoOfThem, Class, 3, expected)!;
        Assert.InRange(balanced.ExpectedApart!.Value, 0, SpreadChooser.ExpectedApart * 4);
        Assert.Single(balanced.Sets.Values.Select(set => set.Contains("yeast_2")).Distinct());
        Assert.True(
            SpreadChooser.Choose(Pool, TwoOfThem, Class, 3)!.Sets.Values.Select(set => set.Contains("yeast_2")).Distinct().Count() > 1
        );

        expected.Remove("yeast_3");
        var unknown = SpreadChooser.Choose(Pool, TwoOfThem, Class, 3, expected)!;
        Assert.Null(unknown.ExpectedApart);
        Assert.Equal(["yeast_3"], unknown.NotKnown.Select(exercise => exercise.Id));
        Assert.Equal(SpreadChooser.Choose(Pool, TwoOfThem, Class, 3)!.Sets, unknown.Sets);
    }

    [Fact]
    public void The_seed_decides_and_no_fitting_exercise_means_no_spread()
    {
        Assert.Equal(SpreadChooser.Choose(Pool, TwoOfThem, Class, 3)!.Sets, SpreadChooser.Choose(Pool, TwoOfThem, Class, 3)!.Sets);
        Assert.Null(SpreadChooser.Choose(Pool, SetWish.None with { Skills = ["steam"] }, Class, 1));
    }
}
