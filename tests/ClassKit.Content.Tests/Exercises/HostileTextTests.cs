using ClassKit.Content.Exercises;

namespace ClassKit.Content.Tests.Exercises;

public sealed class HostileTextTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("You have", ">", "nested deeper than any page needs")]
    [InlineData("You have", "[", "nested deeper than any page needs")]
    [InlineData("You have", "*a **b ", "nested deeper than any page needs")]
    [InlineData("hydration", "[", "deeper than one level")]
    [InlineData("hydration", "{a: ", "deeper than one level")]
    [InlineData("flour*hydration", "(", "is no formula")]
    [InlineData("Bread flour", "x | ", "has no column")]
    [InlineData("Flour is 100 %", "\n- a\n\n  ", null)]
    public void Endless_runs_end_in_a_message_and_a_short_one(string at, string run, string? found)
    {
        var text = Complaint.Break(SampleExercise.Text, at, string.Concat(Enumerable.Repeat(run, 20_000)) + at);

        var reading = ExerciseReader.Read(_folder.Write("water.md", text));

        Assert.Equal(found is null, reading.Succeeded);
        Assert.All(reading.Problems, problem => Assert.InRange(problem.ToString().Length, 1, 1000));
        if (found is not null)
            Assert.Contains(reading.Problems, problem => problem.Found.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_far_too_large_is_not_read()
    {
        var reading = ExerciseReader.Read(_folder.Write("water.md", SampleExercise.Text + new string(' ', 2_000_000)));

        Complaint.Only(reading, null, "larger than 1 MB", "the right file");
    }

    [Fact]
    public void A_folder_in_the_place_of_a_file_is_named()
    {
        _folder.Write("water.md/inside.txt", "");

        Complaint.Only(ExerciseReader.Read(Path.Combine(_folder.Path, "water.md")), null, "This is a folder", "Name a file");
    }

    [Fact]
    public void A_file_name_that_cannot_be_an_id_is_named() =>
        Complaint.Only(
            ExerciseReader.Read(_folder.Write("my-water.md", SampleExercise.Text)),
            null,
            "The file is called `my-water`",
            "lower-case letters, digits and underscores"
        );
}
