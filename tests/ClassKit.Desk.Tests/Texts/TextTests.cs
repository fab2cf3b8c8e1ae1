using ClassKit.Desk.Tests.Tools;
using ClassKit.Desk.Texts;

namespace ClassKit.Desk.Tests.Texts;

/// <summary>A plain file changed on a page keeps its mark and its line ends, and is never written over what somebody else wrote.</summary>
public sealed class TextTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Theory]
    [InlineData("\uFEFFid,name\r\na,A\r\n", "id,name\na,B\n", "\uFEFFid,name\r\na,B\r\n")]
    [InlineData("id,name\na,A\n", "id,name\r\na,B\r\n", "id,name\na,B\n")]
    public async Task A_file_stays_what_it_is(string before, string typed, string after)
    {
        var path = Path.Combine(desk.Folder.Root, "own.csv");
        await File.WriteAllTextAsync(path, before);
        var file = OwnText.Read(path)!;
        Assert.Null(file.Write(file.Stamp, file.With(typed)));
        Assert.Equal(System.Text.Encoding.UTF8.GetBytes(after), await File.ReadAllBytesAsync(path));
        File.Delete(path);
    }

    [Fact]
    public async Task A_note_for_people_is_not_doubted()
    {
        var path = Path.Combine(desk.Folder.Root, "README.md");
        await File.WriteAllTextAsync(path, "# My classes\n");
        Assert.Contains("A note for people", await desk.PageAsync("texts/README.md"), StringComparison.Ordinal);
        File.Delete(path);
    }

    [Fact]
    public async Task A_problem_is_named_with_its_line_before_anything_is_written()
    {
        var path = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(path);
        var file = OwnText.Read(path)!;
        var line = before[..before.IndexOf("ovens:", StringComparison.Ordinal)].Count(letter => letter == '\n') + 1;
        using var looked = await desk.Client.SendAsync(
            desk.Request(
                "texts/class.md",
                ("stamp", file.Stamp),
                ("text", before.Replace("ovens: 3", "ovens: three", StringComparison.Ordinal))
            )
        );
        Assert.Contains($"class.md, line {line}", await looked.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var kept = await desk.Client.SendAsync(
            desk.Request("texts/class.md", ("stamp", new string('0', 64)), ("text", "gone"), ("keep", "yes"))
        );
        Assert.Contains("changed meanwhile", await kept.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllTextAsync(path));
    }
}
