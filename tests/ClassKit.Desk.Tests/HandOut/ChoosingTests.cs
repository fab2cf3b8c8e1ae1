using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.HandOut;

/// <summary>What is handed out is of the lesson that was chosen, and is changed without beginning again.</summary>
public sealed class ChoosingTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task Another_lesson_than_the_one_shown_is_shown_first()
    {
        using var answer = await desk.Client.SendAsync(desk.Request("rounds/class/try", ("shown", "no-oven-in-the-house"), ("lesson", "thin-air-quick-breads"), ("seed", "1")));
        Assert.EndsWith("rounds/class/new?lesson=thin-air-quick-breads", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains("Which exercises of “Thin Air", System.Net.WebUtility.HtmlDecode(await desk.PageAsync("rounds/class/new?lesson=thin-air-quick-breads")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_ticked_and_typed_is_there_to_be_changed()
    {
        var id = System.Text.RegularExpressions.Regex.Match(await desk.PageAsync("rounds/class/new?lesson=thin-air-quick-breads"), "name=\"exercise\" value=\"([^\"]*)\"").Groups[1].Value;
        await desk.DoneAsync("rounds/class/try", ("shown", "thin-air-quick-breads"), ("lesson", "thin-air-quick-breads"), ("exercise", id), ("due", "2026-12-01T17:00"), ("seed", "31"));
        var page = await desk.PageAsync("rounds/class/new?lesson=thin-air-quick-breads&again=yes");
        Assert.Matches($"name=\"exercise\" value=\"{id}\" checked", page);
        Assert.Contains("value=\"2026-12-01T17:00\"", page, StringComparison.Ordinal);
        Assert.Contains("value=\"31\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("checked", await desk.PageAsync("rounds/class/new?lesson=thin-air-quick-breads"), StringComparison.Ordinal);
    }
}
