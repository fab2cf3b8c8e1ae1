using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Texts;

/// <summary>
/// A lesson's page beside its text, made of what stands in the field and of nothing that was written; and the tray of a class that no plan
/// fits.
/// </summary>
public sealed class PreviewTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Lesson = "one-tin-three-lifts";

    [Fact]
    public async Task What_stands_in_the_field_is_shown_and_written_nowhere()
    {
        await desk.DoneAsync($"lessons/class/{Lesson}/own");
        var file = Assert.Single(Directory.EnumerateFiles(desk.Folder.Root, "lesson.md", SearchOption.AllDirectories));
        var (key, text) = (desk.Folder.TextAt(file)!.Key, await File.ReadAllTextAsync(file));

        var shown = await Preview(
            key,
            text.Replace("# One Tin, Three Lifts", "# Quite Another <i>Name</i>", StringComparison.Ordinal),
            "handout.html"
        );
        Assert.Contains("Quite Another", shown, StringComparison.Ordinal);

        var wrong = await Preview(key, text.Replace("## Cautions", "## Causions", StringComparison.Ordinal), "handout.html");
        Assert.Contains("There is no page yet", wrong, StringComparison.Ordinal);
        Assert.Contains("lesson.md, line", wrong, StringComparison.Ordinal);
        Assert.Equal(text, await File.ReadAllTextAsync(file));
    }

    [Fact]
    public async Task A_class_that_no_plan_fits_is_told_what_would_make_it_fit()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var text = await File.ReadAllTextAsync(file);
        await File.WriteAllTextAsync(file, text.Replace("period: 150 min", "period: 70 min", StringComparison.Ordinal));
        using (var begun = await desk.Client.SendAsync(desk.Request($"lessons/class/{Lesson}", null)))
            await desk.OverAsync(begun);
        var page = await desk.PageAsync($"lessons/class/{Lesson}");
        await File.WriteAllTextAsync(file, text);
        Assert.Contains("This class does not fit as it is", page, StringComparison.Ordinal);
    }

    private async Task<string> Preview(string key, string text, string page)
    {
        using var answer = await desk.Client.SendAsync(
            desk.Request($"texts/{key}/preview", ("text", text), ("class", "class"), ("page", page))
        );
        return await answer.Content.ReadAsStringAsync();
    }
}
