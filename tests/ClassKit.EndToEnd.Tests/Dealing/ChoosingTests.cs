using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.UseCases;

namespace ClassKit.EndToEnd.Tests.Dealing;

/// <summary>Sets chosen on the command line, from a lesson and from the bank.</summary>
public sealed class ChoosingTests : IDisposable
{
    private static readonly string Bank = Path.Combine(Checkout.Demo.Root, "lessons", "practice");

    private readonly TemporaryFolder _folder = new();

    private string Out => _folder.Of("out");

    public void Dispose() => _folder.Dispose();

    private ClassKitRun Deal(string lesson, params string[] options)
    {
        var roster = _folder.Of("roster.csv");
        File.WriteAllText(roster, "id,name\nada,Ada Berg\nben,Ben Okoye\n");
        return ClassKitRun.Of(["deal", lesson, "--roster", roster, "--out", Out, .. options]);
    }

    private IReadOnlyList<Exercises.Exercise> Dealt()
    {
        var file = Path.Combine(Out, DealtJson.FileName);
        return DealtJson.Read(file, File.ReadAllText(file)).Model!.Exercises;
    }

    [Fact]
    public void Exercises_by_name_come_from_the_lesson_and_from_the_bank_beside_it()
    {
        var run = Deal(Checkout.Demo.Lesson, "--exercise", "later_bake", "--exercise", "steam").Done();

        Assert.Equal(["later_bake", "steam"], Dealt().Select(exercise => exercise.Id));
        Assert.StartsWith("later_bake, steam: about ", run.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Out, "workbooks", "ada.xlsx")));
    }

    [Fact]
    public void A_folder_of_exercises_is_dealt_by_skill_level_and_time()
    {
        Deal(Bank, "--skill", "yeast", "--skill", "cost", "--level", "standard", "--level", "guided", "--minutes", "40").Done();

        Assert.All(Dealt(), exercise => Assert.Contains(exercise.Skill, (string[])["yeast", "cost"]));
        Assert.All(Dealt(), exercise => Assert.NotEqual(Exercises.ExerciseLevel.Open, exercise.Level));
        Assert.InRange(Dealt().Sum(exercise => exercise.Minutes), 30, 40);
    }

    [Fact]
    public void Points_limit_a_set()
    {
        Deal(Bank, "--points", "12").Done();

        Assert.InRange(Dealt().Sum(Exercises.SetChooser.PointsOf), 10, 12);
    }

    [Theory]
    [InlineData(1, "There is no exercise called `later_bakee`. Did you mean `later_bake`?", "--exercise", "later_bakee")]
    [InlineData(1, "There is no exercise of the skill `yest`. Did you mean `yeast`?", "--skill", "yest")]
    [InlineData(1, "No exercise fits what is asked", "--skill", "yeast", "--minutes", "1")]
    [InlineData(2, "--level takes guided, standard or open, not hard", "--level", "hard")]
    [InlineData(2, "--minutes takes a whole number", "--minutes", "half an hour")]
    public void What_cannot_be_chosen_is_said(int exitCode, string problem, params string[] options)
    {
        var run = Deal(Bank, options);

        Assert.Equal(exitCode, run.ExitCode);
        Assert.Contains(problem, run.Problems, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }
}
