using ClassKit.Content.Diagnostics;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>
/// Natural mistakes of an instructor's first day with the folder that beginning makes: each is said once, where it is, with what was found
/// and what to do. Every message was read as by somebody who has never seen a program's; one that is changed is to be read so again.
/// </summary>
public sealed class FirstDayTests
{
    private static readonly Dictionary<string, Mistake> Mistakes = new[]
    {
        FileMistakes.All,
        ClassMistakes.All,
        LessonMistakes.All,
        FormulaMistakes.All,
        ExerciseMistakes.All,
        TableMistakes.All,
        PictureMistakes.All,
    }
        .SelectMany(mistakes => mistakes)
        .ToDictionary(mistake => mistake.Name, StringComparer.Ordinal);

    public static TheoryData<string> Names => [.. Mistakes.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_said_once_where_it_is_and_with_what_to_do(string name)
    {
        var mistake = Mistakes[name];
        var folder = new TeachingFolder();
        mistake.Make(folder);

        var proof = folder.Check(provesExercises: mistake.File is TeachingFolder.Wet or TeachingFolder.Flour);

        Diagnostic[] told = [.. proof.Problems, .. proof.Doubts, .. proof.Notes];
        Assert.True(told.Length == 1, string.Join('\n', told.Select(one => one.ToString())));
        Assert.Equal((mistake.As, mistake.File, mistake.Line), (told[0].Weight, told[0].File, told[0].Line));
        Assert.Contains(mistake.Finding, told[0].Found, StringComparison.Ordinal);
        Assert.Contains(mistake.Remedy, told[0].Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_said_of_the_folder_as_it_begins()
    {
        var proof = new TeachingFolder().Check();

        Assert.Empty(proof.Problems.Concat(proof.Doubts).Concat(proof.Notes));
        Assert.Equal(7, proof.Items.Count);
    }

    [Fact]
    public void There_are_more_than_fifty() => Assert.True(Names.Count > 50);

    [Fact]
    public void Several_at_once_are_all_said_and_what_blocks_comes_first()
    {
        var folder = new TeachingFolder();
        foreach (
            var name in new[]
            {
                "a copy of the marks lies beside them",
                "the point slipped in the salt",
                "a price was left out",
                "values with a dash",
            }
        )
            Mistakes[name].Make(folder);

        var proof = folder.Check();

        Assert.Equal(
            ["lessons/milk-scones/exercises/how_wet.md", "prices.md"],
            proof.Problems.Select(one => one.File).Order(StringComparer.Ordinal)
        );
        Assert.Equal(TeachingFolder.Formula, Assert.Single(proof.Doubts).File);
        Assert.Single(proof.Exercises);
    }
}
