using System.Text;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Tests.Tools;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Tests.Attacks;

/// <summary>
/// Files that are handed in with bad names, too many of them, too large, broken off, and with script in every name that a page shows.
/// </summary>
public sealed class HandInTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Script = "<script>alert(1)</script>";

    [Fact]
    public async Task Names_lead_nowhere_and_are_shown_as_text()
    {
        var round = Deal();
        string[] names =
        [
            "../../../escaped.xlsx",
            "/etc/cron.d/x",
            "..\\..\\up.xlsx",
            "C:\\windows\\x.xlsx",
            ".classkit-files",
            Script + ".xlsx",
            "a\u202Exslx.exe",
            new string('n', 400) + ".xlsx",
            "nul\0l.xlsx",
            "...",
            "deep/" + string.Concat(Enumerable.Repeat("d/", 40)) + "x.xlsx",
        ];
        var before = Outside(round);

        await HandIn(round, [.. names.Select(name => (name, "no workbook"))]);

        Assert.Equal(before, Outside(round));
        Assert.Equal(names.Length, Directory.EnumerateFiles(round.Returned, "*", SearchOption.AllDirectories).Count());
        var page = await desk.PageAsync($"rounds/class/{round.Name}/returns");
        Assert.Contains("Files that count for nobody", page, StringComparison.Ordinal);
        Assert.DoesNotContain(Script, page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(
            "<script>alert",
            await desk.PageAsync($"rounds/class/{round.Name}/graded/class-report.html"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_same_file_is_kept_once_and_another_of_its_name_beside_it()
    {
        var round = Deal();
        await HandIn(round, [("a.xlsx", "one")]);
        await HandIn(round, [("a.xlsx", "one"), ("a.xlsx", "two")]);
        Assert.Equal(
            ["a (2).xlsx", "a.xlsx"],
            Directory.EnumerateFiles(round.Returned).Select(Path.GetFileName).Order(StringComparer.Ordinal)
        );
        Assert.Equal("one", await File.ReadAllTextAsync(Path.Combine(round.Returned, "a.xlsx")));
    }

    [Fact]
    public async Task Too_many_and_too_large_hand_ins_end_and_keep_what_came_whole()
    {
        var round = Deal();
        using (var many = await Send(round, [.. Enumerable.Range(0, 80).Select(number => ($"{number}.xlsx", $"{number}"))]))
            Assert.Contains("Not all of it came through", await many.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(60, Directory.EnumerateFiles(round.Returned).Count());
        try
        {
            using var large = await Send(round, [("small.xlsx", "small"), ("large.xlsx", new string('x', 9 << 20))]);
            Assert.InRange((int)large.StatusCode, 200, 413);
        }
        catch (HttpRequestException)
        {
            // The server closes the connection while the rest is still being sent.
        }
        Assert.False(File.Exists(Path.Combine(round.Returned, "large.xlsx")));
        Assert.DoesNotContain(".incoming", Directory.EnumerateFileSystemEntries(round.Folder).Select(Path.GetFileName));
    }

    /// <summary>Whoever is told to send less, where the disk or the folder is at fault, sends it again in vain.</summary>
    [Fact]
    public async Task A_file_that_cannot_be_kept_is_told_as_that_with_what_was_kept_before()
    {
        var round = Deal();
        Directory.CreateDirectory(round.Returned);
        await File.WriteAllTextAsync(Path.Combine(round.Returned, "taken"), "a file where a folder is wanted");

        using var answer = await Send(round, [("a.xlsx", "one"), ("taken/b.xlsx", "two"), ("c.xlsx", "three")]);

        var page = await answer.Content.ReadAsStringAsync();
        Assert.Equal(503, (int)answer.StatusCode);
        Assert.Contains("Not all of it could be kept", page, StringComparison.Ordinal);
        Assert.Contains("(1 new file)", page, StringComparison.Ordinal);
        Assert.DoesNotContain("gigabyte", page, StringComparison.Ordinal);
        Assert.Equal(["a.xlsx", "taken"], Directory.EnumerateFiles(round.Returned).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    /// <summary>
    /// A class, a kitchen, a student and a lesson that are called like a script, through every page that can be looked at.
    /// </summary>
    [Fact]
    public async Task Script_in_every_field_is_shown_as_text()
    {
        var folder = desk.Folder.Root;
        var (profile, roster) = (Path.Combine(folder, "class.md"), Path.Combine(folder, "roster.csv"));
        var (was, students) = (await File.ReadAllTextAsync(profile), await File.ReadAllTextAsync(roster));
        try
        {
            await File.WriteAllTextAsync(
                profile,
                was.Replace("# Tuesday bakers", $"# Tuesday {Script}", StringComparison.Ordinal)
                    .Replace("kitchen: Fennel Row Teaching Kitchen", $"kitchen: \"{Script}\"", StringComparison.Ordinal)
            );
            await File.WriteAllTextAsync(
                roster,
                students
                    .Replace("Amara Osei", Script, StringComparison.Ordinal)
                    .Replace("amara.osei@example.org", "\"\"\"><img src=x onerror=alert(1)>\"", StringComparison.Ordinal)
            );
            var round = Deal();
            foreach (
                var path in new[]
                {
                    "",
                    "class/class",
                    "lessons/class",
                    "rounds/class/new",
                    "texts",
                    "texts/class.md",
                    "texts/roster.csv",
                    $"rounds/class/{round.Name}",
                    $"rounds/class/{round.Name}/returns",
                    $"rounds/class/{round.Name}/dealt/sheets/amara-osei.html",
                    "people/class/amara-osei",
                    "sums/ice?water=" + Uri.EscapeDataString(Script),
                }
            )
            {
                var page = await desk.PageAsync(path);
                Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
                Assert.DoesNotContain("<img src=x", page, StringComparison.Ordinal);
                Assert.Contains("<html", page, StringComparison.Ordinal);
            }
        }
        finally
        {
            await File.WriteAllTextAsync(profile, was);
            await File.WriteAllTextAsync(roster, students);
        }
    }

    /// <summary>The files of the folder that a round must leave alone; whichever tests ran before have rounds of their own.</summary>
    private IReadOnlyList<string> Outside(Round round) =>
        [
            .. Directory
                .EnumerateFiles(desk.Folder.Root, "*", SearchOption.AllDirectories)
                .Where(file => !file.StartsWith(round.Folder, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];

    private Round Deal()
    {
        var known = desk.Folder.Class("class")!;
        var round = desk.Folder.NewRound(known, "practice");
        var request = new DealPaths(
            "shipped:/lessons/one-tin-three-lifts",
            known.Roster!,
            new(Exercises.Choosing.SetWish.None with { Exercises = ["oven_dial"] }, IsSpread: false, 7)
        )
        {
            ClassFile = known.File,
        }.Read();
        Assert.True(request.Succeeded, string.Join("\n", request.Problems));
        Assert.Empty(
            OutputFolder
                .Write(new(round.Dealt, DealPractice.Kind), () =>
                    DealPaths.Write(DealPractice.Run(request.Model, UseCases.Running.Run.Unwatched).Model!)
                )
                .Problems
        );
        return round;
    }

    private async Task HandIn(Round round, IReadOnlyList<(string Name, string Content)> files)
    {
        using var answer = await Send(round, files);
        Assert.Equal(303, (int)answer.StatusCode);
        var job = answer.Headers.Location!.ToString();
        while (
            (await desk.PageAsync(job[(job.IndexOf("jobs/", StringComparison.Ordinal))..] + "/now")).Contains(
                "\"isOpen\":true",
                StringComparison.Ordinal
            )
        )
            await Task.Delay(20);
    }

    private async Task<HttpResponseMessage> Send(Round round, IReadOnlyList<(string Name, string Content)> files)
    {
        var request = desk.Request($"rounds/class/{round.Name}/returns", []);
        var parts = new MultipartFormDataContent { { new StringContent(desk.Desk.Keys.FormToken), "token" } };
        foreach (var (name, content) in files)
        {
            var part = new ByteArrayContent(Encoding.UTF8.GetBytes(content));
            part.Headers.ContentDisposition = new("form-data") { Name = "files", FileNameStar = name };
            parts.Add(part);
        }
        request.Content = parts;
        return await desk.Client.SendAsync(request);
    }
}
