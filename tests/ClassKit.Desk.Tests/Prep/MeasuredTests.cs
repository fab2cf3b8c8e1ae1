using System.Net;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Prep;

/// <summary>
/// What teams measured is typed by team, lies among what was brought back, is drawn on the prediction and goes on record.
/// </summary>
public sealed class MeasuredTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Page = "lessons/class/one-tin-three-lifts/measured";

    [Fact]
    public async Task Measurements_of_teams_are_typed_drawn_and_put_on_record()
    {
        Assert.Contains("Popovers, Height, piece 1", await desk.PageAsync(Page + "?team=1"), StringComparison.Ordinal);
        await desk.DoneAsync(
            Page + "/team/1",
            ("popovers.height.1", "80,5"),
            ("popovers.height.2", "81.5"),
            ("batter_buns.height.1", "60"),
            ("popovers.guess", "70"),
            ("popovers.mixed.1", "24")
        );
        await desk.DoneAsync(Page + "/team/2", ("popovers.height.1", "75"), ("batter_buns.height.1", "58"));

        // By hand: team means of popovers 81 and 75 mm, 21 and 17 mm above the buns.
        var drawn = WebUtility.HtmlDecode(await desk.PageAsync(Page + "/drawn/what-we-measured.html")).Replace('\u00A0', ' ');
        Assert.Contains("Mean 78 mm of 2 teams", drawn, StringComparison.Ordinal);
        Assert.Contains("Mean 24 °C of 1 team", drawn, StringComparison.Ordinal);
        Assert.Contains("Popovers stood 19 mm higher than Batter buns", drawn, StringComparison.Ordinal);
        Assert.Contains("value=\"80,5\"", await desk.PageAsync(Page + "?team=1"), StringComparison.Ordinal);

        // A team's own file is corrected by what is typed, whatever it is called.
        var returned = Path.Combine(desk.Folder.Root, "measured", "class", "one-tin-three-lifts", "returned");
        File.Copy(Path.Combine(returned, "typed-team-2.json"), Path.Combine(returned, "a-team-2.json"));
        await desk.DoneAsync(Page + "/team/2", ("popovers.height.1", "85"), ("batter_buns.height.1", "58"));
        var corrected = WebUtility.HtmlDecode(await desk.PageAsync(Page + "/drawn/what-we-measured.html")).Replace('\u00A0', ' ');
        Assert.Contains("Mean 83 mm of 2 teams", corrected, StringComparison.Ordinal);
        Assert.Contains("were typed by hand, and those count", corrected, StringComparison.Ordinal);
        File.Delete(Path.Combine(returned, "a-team-2.json"));

        Assert.Contains(
            "7 measurements of Tuesday bakers, One Tin, Three Lifts on 2026-11-18, are on record",
            await desk.DoneAsync(Page + "/record", ("day", "2026-11-18")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task What_is_no_measurement_is_said_with_what_was_typed_still_there_and_nothing_is_kept()
    {
        var file = Path.Combine(desk.Folder.Root, "measured", "class", "one-tin-three-lifts", "returned", "typed-team-3.json");
        using var answer = await desk.Client.SendAsync(
            desk.Request(Page + "/team/3", ("popovers.height.1", "80"), ("popovers.height.2", "<b>tall</b>"))
        );
        var page = await answer.Content.ReadAsStringAsync();
        Assert.Contains("“&lt;b&gt;tall&lt;/b&gt;” is no measurement", page, StringComparison.Ordinal);
        Assert.Contains("value=\"80\"", page, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
        Assert.Equal(404, await desk.StatusAsync(desk.Request(Page + "/team/7", ("popovers.height.1", "80"))));
        Assert.Contains("The day is “soon”", await Text(desk.Request(Page + "/record", ("day", "soon"))), StringComparison.Ordinal);
    }

    private async Task<string> Text(HttpRequestMessage request)
    {
        using var answer = await desk.Client.SendAsync(request);
        return await answer.Content.ReadAsStringAsync();
    }
}
