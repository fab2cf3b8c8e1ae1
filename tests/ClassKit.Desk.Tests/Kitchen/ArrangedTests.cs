using ClassKit.Content.Rosters;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Kitchen;

/// <summary>What was arranged with somebody is written into their own line of the list; every other byte stays.</summary>
public sealed class ArrangedTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Page = "class/class/arranged";

    private string File => Path.Combine(desk.Folder.Root, "roster.csv");

    [Fact]
    public async Task One_line_changes_and_remarks_order_quotes_and_line_ends_stay()
    {
        var before = await System.IO.File.ReadAllTextAsync(File);
        const string list =
            "# Tuesday; do not sort\r\nname;id;notes\r\n\"Osei; Amara\";amara;\"two\r\nlines\"\r\n\r\n# came later\r\nBo Cole;bo;\"plain\"\r\n";
        await System.IO.File.WriteAllTextAsync(File, list);
        Assert.Equal(
            303,
            await desk.StatusAsync(
                desk.Request(
                    Page,
                    ("stamp", await Stamp()),
                    ("there.amara", "yes"),
                    ("there.bo", "yes"),
                    ("extra-time.bo", "25 %"),
                    ("due.bo", "2026-11-20 17:00")
                )
            )
        );
        Assert.Equal(
            list.Replace("name;id;notes", "name;id;notes;extra time;due", StringComparison.Ordinal)
                .Replace("Bo Cole;bo;\"plain\"", "Bo Cole;bo;plain;25 %;2026-11-20 17:00", StringComparison.Ordinal),
            await System.IO.File.ReadAllTextAsync(File)
        );
        Assert.Equal(0.25m, RosterReader.Read(File).Model!.ArrangementOf("bo").ExtraTime);

        // Nothing typed anew: not a byte.
        var kept = await System.IO.File.ReadAllBytesAsync(File);
        Assert.Equal(
            303,
            await desk.StatusAsync(
                desk.Request(
                    Page,
                    ("stamp", await Stamp()),
                    ("there.amara", "yes"),
                    ("there.bo", "yes"),
                    ("extra-time.bo", "25 %"),
                    ("due.bo", "2026-11-20 17:00")
                )
            )
        );
        Assert.Equal(kept, await System.IO.File.ReadAllBytesAsync(File));
        await System.IO.File.WriteAllTextAsync(File, before);
    }

    [Fact]
    public async Task What_would_not_hold_is_said_while_it_is_typed_and_is_not_written()
    {
        var before = await System.IO.File.ReadAllBytesAsync(File);
        (string, string)[] typed = [("stamp", await Stamp()), ("there.rosa-whitehorse", "yes"), ("extra-time.rosa-whitehorse", "much")];
        Assert.Contains("Under “extra time” stands “much”", await Text(desk.Request(Page + "/look", typed)), StringComparison.Ordinal);
        var page = await Text(desk.Request(Page, typed));
        Assert.Contains("Nothing was written", page, StringComparison.Ordinal);
        Assert.Contains("value=\"much\"", page, StringComparison.Ordinal);
        Assert.Equal(before, await System.IO.File.ReadAllBytesAsync(File));
        Assert.Contains(
            "99 teams for 24 students",
            await Text(desk.Request("class/class/look", ("students", "24"), ("teams", "99"))),
            StringComparison.Ordinal
        );
    }

    /// <summary>A slip of the pen means that somebody is not excused: it is kept, and said at once.</summary>
    [Fact]
    public async Task What_nothing_is_called_is_said_as_soon_as_it_is_kept()
    {
        var before = await System.IO.File.ReadAllBytesAsync(File);
        Assert.DoesNotContain("nothing follows", await desk.PageAsync(Page), StringComparison.Ordinal);
        (string, string)[] typed =
        [
            ("stamp", await Stamp()),
            ("there.rosa-whitehorse", "yes"),
            ("leaves-out.rosa-whitehorse", "three_trays; three_trayz"),
            ("excused-from.rosa-whitehorse", "Nonsense lesson; one-tin-three-lifts"),
        ];
        var said = await Text(desk.Request(Page + "/look", typed));
        Assert.Contains("Did you mean “three_trays”?", said, StringComparison.Ordinal);
        Assert.Equal(303, await desk.StatusAsync(desk.Request(Page, typed)));
        var page = System.Net.WebUtility.HtmlDecode(await desk.PageAsync(Page + "?kept=yes"));
        Assert.Contains("From this nothing follows yet", page, StringComparison.Ordinal);
        Assert.Contains("Something is arranged with Rosa Whitehorse for “Nonsense lesson”", page, StringComparison.Ordinal);
        Assert.Contains("Rosa Whitehorse is to leave out “three_trayz”", page, StringComparison.Ordinal);
        Assert.DoesNotContain("leave out “three_trays”", page, StringComparison.Ordinal);
        Assert.DoesNotContain("“one-tin-three-lifts”, and", page, StringComparison.Ordinal);
        await System.IO.File.WriteAllBytesAsync(File, before);
    }

    [Fact]
    public async Task A_list_that_was_changed_by_hand_meanwhile_is_not_written_over()
    {
        var before = await System.IO.File.ReadAllTextAsync(File);
        var stamp = await Stamp();
        var byHand = before + "lee-new,Lee New,lee@example.org\n";
        await System.IO.File.WriteAllTextAsync(File, byHand);
        var page = await Text(
            desk.Request(Page, ("stamp", stamp), ("there.rosa-whitehorse", "yes"), ("large-print.rosa-whitehorse", "yes"))
        );
        Assert.Contains("changed meanwhile", page, StringComparison.Ordinal);
        Assert.Contains("You had typed: Rosa Whitehorse, large print: yes.", page, StringComparison.Ordinal);
        Assert.Contains("Lee New", page, StringComparison.Ordinal);
        Assert.DoesNotContain($"value=\"{stamp}\"", page, StringComparison.Ordinal);
        Assert.Equal(byHand, await System.IO.File.ReadAllTextAsync(File));
        await System.IO.File.WriteAllTextAsync(File, before);
    }

    private async Task<string> Stamp()
    {
        var page = await desk.PageAsync(Page);
        var at = page.IndexOf("name=\"stamp\" value=\"", StringComparison.Ordinal) + "name=\"stamp\" value=\"".Length;
        return page[at..page.IndexOf('"', at)];
    }

    private async Task<string> Text(HttpRequestMessage request)
    {
        using var answer = await desk.Client.SendAsync(request);
        return await answer.Content.ReadAsStringAsync();
    }
}
