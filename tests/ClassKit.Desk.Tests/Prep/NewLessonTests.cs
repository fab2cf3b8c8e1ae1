using System.Net;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;
using ClassKit.Desk.Tests.Tools;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Tests.Prep;

/// <summary>A lesson of the instructor's own is begun at the desk, sound as it is, and never over anything.</summary>
public sealed class NewLessonTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Lessons = "lessons/class";

    public static TheoryData<string, string> Begun =>
        new()
        {
            { "Oat scones", "" },
            { "Brot über Nacht, 2. Fassung", "one-dough-three-clocks" },
            { "蒸しパン", "no-oven-in-the-house" },
        };

    [Theory]
    [MemberData(nameof(Begun))]
    public async Task It_is_sound_bears_its_name_and_is_opened(string name, string like)
    {
        using var answer = await desk.Client.SendAsync(desk.Request(Lessons + "/begin", ("name", name), ("like", like)));

        Assert.Equal(303, (int)answer.StatusCode);
        var lesson = Assert.Single(desk.Folder.Lessons(), lesson => lesson.Title == name);
        Assert.False(lesson.IsShipped);
        Assert.EndsWith($"/{Lessons}/{Uri.EscapeDataString(lesson.Key)}", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Empty(CheckContent.Run(new(Library.OfPaths(), [lesson.Path]), Run.Unwatched).Problems);
        Assert.DoesNotContain(Directory.EnumerateDirectories(Path.GetDirectoryName(lesson.Path)!), folder =>
            Path.GetFileName(folder).StartsWith('.')
        );
    }

    /// <summary>A copy of one's own has the changes that were made to it, and is not changed with it.</summary>
    [Fact]
    public async Task A_copy_of_ones_own_is_another_lesson()
    {
        await desk.StatusAsync(desk.Request(Lessons + "/begin", ("name", "Flat and quick"), ("like", "")));
        var own = desk.Folder.Lessons().Single(lesson => lesson.Title == "Flat and quick");
        var text = Path.Combine(own.Path, "lesson.md");
        var changed = (await File.ReadAllTextAsync(text)).Replace(
            "# Flat and quick",
            "# Flat and quick\n\nOn the griddle.",
            StringComparison.Ordinal
        );
        await File.WriteAllTextAsync(text, changed);

        await desk.StatusAsync(desk.Request(Lessons + "/begin", ("name", "Flat and slow"), ("like", own.Key)));

        var copy = desk.Folder.Lessons().Single(lesson => lesson.Title == "Flat and slow");
        Assert.Contains("On the griddle.", await File.ReadAllTextAsync(Path.Combine(copy.Path, "lesson.md")), StringComparison.Ordinal);
        Assert.Equal(Names(own.Path), Names(copy.Path));
        Assert.Equal(changed, await File.ReadAllTextAsync(text));
        Assert.NotNull(LessonReader.Read(copy.Path).Model);

        static List<string> Names(string folder) =>
            [
                .. Directory
                    .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
                    .Select(file => Path.GetRelativePath(folder, file))
                    .Order(StringComparer.Ordinal),
            ];
    }

    [Theory]
    [InlineData("", "", "The lesson has no name")]
    [InlineData("...", "", "There is a lesson or a folder called")]
    [InlineData("Twice", "nobody", "no longer there")]
    [InlineData("One tin, three lifts", "", "There is a lesson or a folder called")]
    public async Task What_cannot_be_begun_is_said_and_what_was_typed_stays(string name, string like, string why)
    {
        using var answer = await desk.Client.SendAsync(desk.Request(Lessons + "/begin", ("name", name), ("like", like)));
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());

        Assert.Contains(why, page, StringComparison.Ordinal);
        Assert.Contains($"value=\"{name}\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_written_over()
    {
        await desk.StatusAsync(desk.Request(Lessons + "/begin", ("name", "Only once"), ("like", "")));
        var lesson = desk.Folder.Lessons().Single(lesson => lesson.Title == "Only once");
        await File.WriteAllTextAsync(Path.Combine(lesson.Path, "lesson.md"), "# Mine");

        using var answer = await desk.Client.SendAsync(desk.Request(Lessons + "/begin", ("name", "Only once"), ("like", "")));

        Assert.Contains("There is a lesson or a folder called", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal("# Mine", await File.ReadAllTextAsync(Path.Combine(lesson.Path, "lesson.md")));
        Directory.Delete(lesson.Path, recursive: true);
    }
}
