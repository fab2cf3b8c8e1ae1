using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Touring;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>Sets chosen from a lesson and from the bank.</summary>
public sealed class ChoosingTests
{
    private static readonly DemoMaterial Demo = DemoMaterial.Find(AppContext.BaseDirectory)!;

    private static Reading<PracticeSet> FromBank(SetWish wish) =>
        PracticeSet.Read(Path.Combine(Demo.Root, "lessons", "practice"), wish, DealPractice.DefaultSeed);

    [Fact]
    public void Exercises_by_name_come_from_the_lesson_and_from_the_bank_beside_it()
    {
        var set = PracticeSet.Read(Demo.Lesson, new(["later_bake", "steam"], [], [], null, null), 1).Model!;

        Assert.Equal(["later_bake", "steam"], set.Exercises.Select(exercise => exercise.Id));
        Assert.Equal(["later_bake", "steam"], set.Exercises.Select(exercise => exercise.Id));
    }

    [Fact]
    public void A_folder_of_exercises_is_chosen_from_by_skill_level_and_time()
    {
        var chosen = FromBank(new([], ["yeast", "cost"], [ExerciseLevel.Standard, ExerciseLevel.Guided], 40, null)).Model!.Exercises;

        Assert.All(chosen, exercise => Assert.Contains(exercise.Skill, (string[])["yeast", "cost"]));
        Assert.All(chosen, exercise => Assert.NotEqual(ExerciseLevel.Open, exercise.Level));
        Assert.InRange(chosen.Sum(exercise => exercise.Minutes), 30, 40);
    }

    [Fact]
    public void Points_limit_a_set() =>
        Assert.InRange(FromBank(new([], [], [], null, 12)).Model!.Exercises.Sum(SetChooser.PointsOf), 10, 12);

    public static TheoryData<SetWish, string> Impossible =>
        new()
        {
            { new(["later_bakee"], [], [], null, null), "There is no exercise called `later_bakee`. Did you mean `later_bake`?" },
            { new([], ["yest"], [], null, null), "There is no exercise of the skill `yest`. Did you mean `yeast`?" },
            { new([], ["yeast"], [], 1, null), "No exercise fits what is asked" },
        };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void What_cannot_be_chosen_is_said(SetWish wish, string problem) =>
        Assert.Contains(problem, Assert.Single(FromBank(wish).Problems).ToString(), StringComparison.Ordinal);
}
