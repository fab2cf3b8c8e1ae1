using ClassKit.Desk.Tests.Tools;
using ClassKit.Desk.Texts;

namespace ClassKit.Desk.Tests.Texts;

/// <summary>A text that was kept says so, and what is wrong in it all the same.</summary>
public sealed class KeepingTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task It_is_said_that_it_was_kept_and_what_is_wrong_in_it()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        try
        {
            Assert.Contains("Kept.", await KeptAsync(file, before + "\n"), StringComparison.Ordinal);

            var spoilt = await KeptAsync(file, before.Replace("period: 150 min", "period: a morning", StringComparison.Ordinal));
            Assert.Contains("Kept, as it is.", spoilt, StringComparison.Ordinal);
            Assert.Contains("class.md, line", spoilt, StringComparison.Ordinal);
            Assert.Contains("a morning", await File.ReadAllTextAsync(file), StringComparison.Ordinal);
        }
        finally
        {
            await File.WriteAllTextAsync(file, before);
        }
    }

    /// <summary>
    /// What old spreadsheets save as plain CSV is in Windows-1252, which lists are read in; keeping it on a page must not cost anybody
    /// their name's accents.
    /// </summary>
    [Fact]
    public void A_list_in_old_letters_keeps_every_name()
    {
        var file = Path.Combine(desk.Folder.Root, "old-letters.csv");
        byte[] old = [.. "name\nJos"u8, 0xE9, .. " Pe"u8, 0xF1, .. "a\n"u8];
        File.WriteAllBytes(file, old);
        try
        {
            var text = OwnText.Read(file)!;
            Assert.Equal("name\nJosé Peña\n", text.Text);

            Assert.Null(text.Write(text.Stamp, text.With(text.Text)));
            Assert.Equal("\uFEFFname\nJosé Peña\n", System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(file)));
            Assert.Equal("name\nJosé Peña\n", OwnText.Read(file)!.Text);

            File.WriteAllBytes(Path.ChangeExtension(file, ".md"), old);
            Assert.Null(OwnText.Read(Path.ChangeExtension(file, ".md")));
        }
        finally
        {
            File.Delete(file);
            File.Delete(Path.ChangeExtension(file, ".md"));
        }
    }

    private async Task<string> KeptAsync(string file, string text)
    {
        var page = $"texts/{desk.Folder.TextAt(file)!.Key}";
        using var answer = await desk.Client.SendAsync(
            desk.Request(page, ("stamp", OwnText.Read(file)!.Stamp), ("text", text), ("keep", "yes"))
        );
        Assert.Equal(303, (int)answer.StatusCode);
        return await desk.PageAsync(page + "?kept=yes");
    }
}
