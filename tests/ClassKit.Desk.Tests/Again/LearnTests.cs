using ClassKit.Content.Sources;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Again;

/// <summary>
/// A wrong turn that a class took is put into the exercise of the folder, in the words that the instructor gave it; and what was drawn is
/// rehearsed before it is handed out.
/// </summary>
public sealed class LearnTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Round = "rounds/class/01-thin-air-quick-breads";

    private const string Proposals = """
        # Wrong turns to list

        ## pan_loaf: water

        ### Misconception: added_the_share

        `=flour+water_percent`

        It looks as if you added. A share is multiplied.
        """;

    [Fact]
    public async Task A_set_is_rehearsed_and_what_a_class_took_wrongly_is_learned()
    {
        var id = System
            .Text.RegularExpressions.Regex.Match(
                await desk.PageAsync("rounds/class/new?lesson=thin-air-quick-breads"),
                "name=\"exercise\" value=\"([^\"]*)\""
            )
            .Groups[1]
            .Value;
        await desk.DoneAsync("rounds/class/try", ("lesson", "thin-air-quick-breads"), ("exercise", id), ("seed", "7"));
        Assert.Equal(404, await desk.StatusAsync(desk.Request("rounds/class/rehearsed", null)));
        await desk.DoneAsync("rounds/class/rehearse");
        Assert.Contains("rounds/class/rehearsed", await desk.PageAsync("rounds/class/tried"), StringComparison.Ordinal);
        Assert.Contains("invented", await desk.PageAsync("rounds/class/rehearsed"), StringComparison.OrdinalIgnoreCase);

        await desk.DoneAsync("rounds/class/deal");
        Assert.Equal(404, await desk.StatusAsync(desk.Request(Round + "/learn", null)));
        var graded = Path.Combine(
            desk.Folder.Round(desk.Folder.Class("class")!, "01-thin-air-quick-breads")!.Graded,
            "proposed-misconceptions.md"
        );
        Directory.CreateDirectory(Path.GetDirectoryName(graded)!);
        await File.WriteAllTextAsync(graded, Proposals);
        Assert.Contains(
            "which is not among the files given",
            await Text(desk.Request(Round + "/learn", ("proposals", Proposals))),
            StringComparison.Ordinal
        );

        var own = Path.Combine(desk.Folder.Root, "exercises", "pan_loaf.md");
        Directory.CreateDirectory(Path.GetDirectoryName(own)!);
        await using (var shipped = Shipped.Tree.Open("lessons/practice/bakers-percentage/pan_loaf.md"))
        await using (var file = File.Create(own))
            await shipped.CopyToAsync(file);
        var before = await File.ReadAllLinesAsync(own);
        Assert.Contains(
            "=flour+water_percent",
            System.Net.WebUtility.HtmlDecode(await desk.PageAsync(Round + "/learn")),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "exercises/pan_loaf.md",
            await Text(
                desk.Request(
                    Round + "/learn",
                    ("proposals", Proposals.Replace("It looks as if you added.", "You added.", StringComparison.Ordinal))
                )
            ),
            StringComparison.Ordinal
        );
        Assert.Equal(
            ["### Misconception: added_the_share", "`=flour+water_percent`", "You added. A share is multiplied."],
            (await File.ReadAllLinesAsync(own)).Except(before)
        );
    }

    private async Task<string> Text(HttpRequestMessage request)
    {
        using var answer = await desk.Client.SendAsync(request);
        return await answer.Content.ReadAsStringAsync();
    }
}
