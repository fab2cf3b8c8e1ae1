using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Checking;

namespace ClassKit.UseCases.Tests.Checking;

/// <summary>
/// A folder of exercises with one thing wrong in each, and beside each what an instructor is told. The messages were read one by one as by
/// someone who never programmed; a change in one of them is to be read so again before its file is changed.
/// </summary>
public sealed class BrokenExerciseTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "tests", "ClassKit.UseCases.Tests", "Checking", "Broken");

    public static TheoryData<string> Names =>
        [.. Directory.EnumerateFiles(Folder, "*.md").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_wrong_is_said_with_its_line_and_the_way_out(string name)
    {
        var file = Path.Combine(Folder, name + ".md");

        var source = Source.Named(file);
        var reading = ExerciseReader.Read(source);
        var proof = ProvedExercise.Of(source);
        IEnumerable<Diagnostic?> told = [.. reading.Problems, proof?.Problem, proof?.Note];

        Assert.Equal(
            File.ReadAllText(Path.Combine(Folder, name + ".expected")).ReplaceLineEndings("\n"),
            string.Concat(told.OfType<Diagnostic>().Select(problem => (problem with { File = name + ".md" }) + "\n")).Replace('\u00A0', ' ')
        );
    }

    [Fact]
    public void There_are_more_than_forty() => Assert.True(Names.Count > 40);
}
