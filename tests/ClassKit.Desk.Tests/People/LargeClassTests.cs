using System.Text.RegularExpressions;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.People;

/// <summary>A class of five hundred: each of its pages has everybody on it, and what narrows them down.</summary>
public sealed class LargeClassTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const int Many = 500;

    [Fact]
    public async Task Everybody_of_a_large_class_stands_on_its_pages()
    {
        var rows = string.Concat(
            Enumerable.Range(1, Many).Select(number => FormattableString.Invariant($"s{number},Student Number {number}\n"))
        );
        await File.WriteAllTextAsync(Path.Combine(desk.Folder.Root, "roster.csv"), "id,name\n" + rows);
        Directory.Delete(Path.Combine(desk.Folder.Root, "term"), recursive: true);
        using (
            var begun = await desk.Client.SendAsync(
                desk.Request("marks/class/new", ("title", "Autumn"), ("bench", "yes"), ("written", "yes"))
            )
        )
            Assert.Equal(303, (int)begun.StatusCode);

        Assert.Equal(Many, Regex.Count(await desk.PageAsync("class/class"), "href=\"people/class/s"));
        foreach (var work in new[] { 1, 2 })
        {
            var page = await desk.PageAsync($"marks/class/terms.class.autumn/work/{work}");
            Assert.Equal(Many, Regex.Count(page, "<th scope=\"row\">Student Number "));
            Assert.Contains("data-filter", page, StringComparison.Ordinal);
        }

        // A form of all of them is taken whole: a level for each and criterion.
        var fields = Enumerable
            .Range(1, Many)
            .SelectMany(number =>
                Enumerable.Range(1, 8).Select(criterion => (FormattableString.Invariant($"b{criterion}.s{number}"), "Secure"))
            )
            .ToArray();
        Assert.Equal(303, await desk.StatusAsync(desk.Request("marks/class/terms.class.autumn/work/1/bench/first", fields)));
        Assert.Equal(
            Many + 1,
            (await File.ReadAllLinesAsync(Path.Combine(desk.Folder.Root, "terms", "class", "bench-work-1-first.csv"))).Length
        );
    }
}
