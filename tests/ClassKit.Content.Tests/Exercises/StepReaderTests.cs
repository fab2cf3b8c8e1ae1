using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Tests.Exercises;

public sealed class StepReaderTests : IDisposable
{
    private const string Part = "## Part: water";

    private const string Steps = """
        ## Step: starter_flour

        Flour in the starter

        - Key: `=flour/5`
        - Unit: g

        ## Step: fresh_flour

        Flour without it

        - Key: `=flour-starter_flour`
        - Unit: g


        """;

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private Reading<Exercise> Read(string text) => ExerciseReader.Read(_folder.Write("water.md", text));

    private static string WithSteps(string key = "=fresh_flour*hydration") =>
        Complaint.Break(Complaint.Break(SampleExercise.Text, Part, Steps + Part), "`=flour*hydration`", $"`{key}`");

    [Fact]
    public void A_key_over_steps_is_kept_as_written_and_worked_in_for_whoever_computes()
    {
        var exercise = Read(WithSteps()).Model!;

        Assert.Equal(["starter_flour", "fresh_flour"], exercise.Steps.Select(step => step.Id));
        Assert.Equal("Flour without it", exercise.Steps[1].What);
        Assert.Equal("=fresh_flour*hydration", exercise.Parts[0].Written!.Text);
        Assert.Equal("=(flour-(flour/5))*hydration", exercise.Parts[0].Key.ToString());
        Assert.Null(exercise.Parts[1].Written);
    }

    [Fact]
    public void Misconceptions_and_constraints_may_use_steps_too()
    {
        var text = Complaint.Break(
            Complaint.Break(WithSteps(), "`=water<600`", "`=fresh_flour<700`"),
            "`=flour/hydration`",
            "`=starter_flour*hydration`"
        );
        var exercise = Read(text).Model!;

        Assert.Equal("=(flour-(flour/5))<700", exercise.Constraints[0].ToString());
        Assert.Equal("=(flour/5)*hydration", exercise.Parts[0].Misconceptions[0].Formula.ToString());
        Assert.Equal("=starter_flour*hydration", exercise.Parts[0].Misconceptions[0].Written!.Text);
    }

    [Fact]
    public void A_step_that_no_key_uses_is_said() =>
        Assert.Contains(Read(WithSteps("=starter_flour*hydration")).Problems, problem =>
            problem.Found == "No key uses the step `fresh_flour`"
        );

    [Fact]
    public void A_step_may_not_use_a_later_one()
    {
        var text = WithSteps().Replace("`=flour/5`", "`=fresh_flour/5`", StringComparison.Ordinal);

        Assert.Contains(Read(text).Problems, problem => problem.Found.StartsWith("The key uses `fresh_flour`", StringComparison.Ordinal));
    }

    [Fact]
    public void A_step_is_not_told_to_the_student()
    {
        var text = Complaint.Break(WithSteps(), "want a hydration of {hydration}", "want a hydration of {hydration}, with {fresh_flour}");

        Assert.Contains(Read(text).Problems, problem => problem.Found == "`{fresh_flour}` stands for no given");
    }
}
