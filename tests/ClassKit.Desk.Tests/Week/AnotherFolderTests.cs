using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Week;

/// <summary>From a look round to a folder of one's own and back, while the desk stays open.</summary>
public sealed class AnotherFolderTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task A_look_round_leads_to_a_folder_of_ones_own_and_back_without_closing_the_desk()
    {
        var (name, look) = ($"begun-{Guid.NewGuid():n}", desk.Folder.Root);
        var own = Path.Combine(Environment.CurrentDirectory, name);
        try
        {
            Assert.Contains("href=\"folders\">Begin a folder of your own", await desk.PageAsync("class/class"), StringComparison.Ordinal);
            Assert.DoesNotContain("Look round with", await desk.PageAsync("folders"), StringComparison.Ordinal);

            Assert.Contains(
                "selected",
                Line(await Sent("begin", ("name", "a/b"), ("place", "here")), "value=\"here\""),
                StringComparison.Ordinal
            );
            Assert.Equal(look, desk.Folder.Root);
            await Sent("begin", ("name", name), ("place", "here"));
            Assert.Equal((own, false), (desk.Folder.Root, desk.Folder.IsLookRound));
            Assert.DoesNotContain("Begin a folder of your own", await desk.PageAsync(""), StringComparison.Ordinal);

            // What comes first in it is one's own class: nothing is handed out to the names that a folder begins with.
            Assert.Matches("href=\"class/[^\"]*#roster\">Say who is in the class<", await desk.PageAsync(""));
            Assert.Contains("names that every new folder begins with", await desk.PageAsync("rounds/class/new"), StringComparison.Ordinal);
            await File.WriteAllTextAsync(Path.Combine(own, "roster.csv"), "name\nAda Berg\n");
            Assert.Contains(">Prepare a lesson<", await desk.PageAsync(""), StringComparison.Ordinal);
            Assert.DoesNotContain(own, await desk.PageAsync("folders"), StringComparison.Ordinal);

            // What was tried on the look round is still there, and so is the folder when one comes back.
            await Sent("look-round");
            Assert.Equal((look, true), (desk.Folder.Root, desk.Folder.IsLookRound));
            var known = Line(await desk.PageAsync("folders"), own);
            await Sent("open", ("folder", known.Split("name=\"folder\" value=\"")[1].Split('"')[0]));
            Assert.Equal(own, desk.Folder.Root);

            var last = await Sent("close");
            Assert.Contains($"<li>{own}</li>", last, StringComparison.Ordinal);
            Assert.Contains("The invented class goes away with it", last, StringComparison.Ordinal);
        }
        finally
        {
            if (Directory.Exists(own))
                Directory.Delete(own, recursive: true);
        }
    }

    private static string Line(string page, string with) => page.Split('\n').First(line => line.Contains(with, StringComparison.Ordinal));

    private async Task<string> Sent(string to, params (string Name, string Value)[] fields)
    {
        using var answer = await desk.Client.SendAsync(desk.Request(to, fields));
        return await answer.Content.ReadAsStringAsync();
    }
}
