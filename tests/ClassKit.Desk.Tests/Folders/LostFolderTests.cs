using System.Net;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Folders;

/// <summary>
/// A folder that goes away, or cannot be written, while the desk is open on it: said in words, and nothing is half-written.
/// </summary>
public sealed class LostFolderTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task A_folder_that_goes_away_is_said_everywhere_and_is_as_it_was_when_it_comes_back()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows moves no folder in which a file is held open.");
        var (root, away) = (desk.Folder.Root, desk.Folder.Root + ".away");
        await desk.ReadyAsync("lessons/class/one-tin-three-lifts");
        var before = Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories).Order().ToList();
        Directory.Move(root, away);
        try
        {
            foreach (
                var page in new[]
                {
                    "",
                    "class/class",
                    "lessons/class",
                    "lessons/class/one-tin-three-lifts",
                    "marks/class",
                    "rounds/class/new",
                    "texts",
                }
            )
            {
                using var answer = await desk.Client.SendAsync(desk.Request(page, null));
                Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
                Assert.Contains("Your folder is not there", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
            }
            foreach (var form in new[] { "classes/new", "class/class", "rounds/class/try", "marks/class/new" })
            {
                using var answer = await desk.Client.SendAsync(desk.Request(form, ("name", "Another"), ("title", "Another")));
                Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
                Assert.Contains("what you sent just now was not kept", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
            }
            Assert.False(Directory.Exists(root));
        }
        finally
        {
            Directory.Move(away, root);
        }
        Assert.Equal(before, Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories).Order());
        Assert.Equal(200, await desk.StatusAsync(desk.Request("class/class", null)));
    }

    /// <summary>Where a folder should be there lies a file, so that not even root can write below it.</summary>
    [Fact]
    public async Task What_cannot_be_written_is_said_and_leaves_nothing_behind()
    {
        var root = desk.Folder.Root;
        await File.WriteAllTextAsync(Path.Combine(root, "rounds"), "in the way");
        await File.WriteAllTextAsync(Path.Combine(root, "terms"), "in the way");
        await File.WriteAllTextAsync(Path.Combine(root, "packs"), "in the way");
        Directory.CreateDirectory(Path.Combine(root, ".class.md.new"));
        var before = Directory.EnumerateFileSystemEntries(root, "*", SearchOption.AllDirectories).Order().ToList();
        try
        {
            await desk.DoneAsync("rounds/class/try", ("lesson", "one-tin-three-lifts"), ("seed", "2026"));
            Assert.Contains("class=\"problems\"", await desk.DoneAsync("rounds/class/deal"), StringComparison.Ordinal);
            Assert.Contains("class=\"problems\"", await desk.DoneAsync("lessons/class/one-tin-three-lifts/keep"), StringComparison.Ordinal);
            using (var answer = await desk.Client.SendAsync(desk.Request("marks/class/new", ("title", "Autumn"), ("bench", "yes"))))
                Assert.Contains("could not be begun", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
            var page = await desk.PageAsync("class/class");
            var stamp = System.Text.RegularExpressions.Regex.Match(page, "name=\"stamp\" value=\"(?<stamp>[^\"]*)\"").Groups["stamp"].Value;
            using (
                var answer = await desk.Client.SendAsync(
                    desk.Request("class/class", [("stamp", stamp), .. Fields(page).Where(field => field.Name != "ovens"), ("ovens", "4")])
                )
            )
                Assert.Contains("It could not be written", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
            Assert.Equal(before, Directory.EnumerateFileSystemEntries(root, "*", SearchOption.AllDirectories).Order());
        }
        finally
        {
            foreach (var name in new[] { "rounds", "terms", "packs" })
                File.Delete(Path.Combine(root, name));
            Directory.Delete(Path.Combine(root, ".class.md.new"));
        }
    }

    private static IEnumerable<(string Name, string Value)> Fields(string page) =>
        Attacks
            .HostileFieldsTests.Forms(page)
            .Single(form => form.Action == "class/class")
            .Fields.Where(field => field.Name is not ("token" or "stamp"))
            .Select(field => (field.Name, field.Value));
}
