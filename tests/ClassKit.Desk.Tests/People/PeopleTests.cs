using System.IO.Compression;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.People;

/// <summary>
/// A student's page: from the list alone, with what is on record to take along, and erased only after it was said what that comes to.
/// </summary>
public sealed class PeopleTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Rosa = "people/class/rosa-whitehorse";

    [Fact]
    public async Task Everybody_on_the_list_has_a_page_and_nobody_else()
    {
        Assert.Contains("Nothing was handed out to them yet", await desk.PageAsync("people/class/amara-osei"), StringComparison.Ordinal);
        Assert.Equal(404, await desk.StatusAsync(desk.Request("people/class/nobody", null)));
    }

    [Fact]
    public async Task All_that_is_on_record_is_given_out_and_erased_once_that_is_meant()
    {
        await desk.DoneAsync("marks/class/term.term/record");
        Assert.Contains("Rosa Whitehorse", await OnRecord(), StringComparison.Ordinal);

        await desk.DoneAsync(Rosa + "/erase/look");
        Assert.Contains("Rosa Whitehorse", await OnRecord(), StringComparison.Ordinal);

        await desk.DoneAsync(Rosa + "/erase", ("why", "Asked for it"));
        Assert.Contains("The record knows nobody of that id", await desk.PageAsync(Rosa + "/record"), StringComparison.Ordinal);

        // The list and the tables of marks still name her, and say so; the record does not take her back from them.
        var named = await desk.PageAsync(Rosa + "/erase");
        Assert.Contains(">roster.csv<", named, StringComparison.Ordinal);
        Assert.Contains(">term/marks.csv<", named, StringComparison.Ordinal);
        Assert.Contains(
            "1 student whom you erased is still named in your lists or folders",
            await desk.DoneAsync("marks/class/term.term/record"),
            StringComparison.Ordinal
        );
        await desk.DoneAsync("marks/class/term.term/freeze");
        Assert.Contains("The record knows nobody of that id", await desk.PageAsync(Rosa + "/record"), StringComparison.Ordinal);
        Assert.Contains("Given out on 2026-11-25", await desk.PageAsync("marks/class/term.term"), StringComparison.Ordinal);

        // With the box ticked the files are done in the same step: list and marks are without her, and the term holds without her.
        var done = await desk.DoneAsync(Rosa + "/erase", ("why", "Asked for it"), ("files", "yes"));
        Assert.Contains("own rows were taken out of", done, StringComparison.Ordinal);
        Assert.Equal(404, await desk.StatusAsync(desk.Request(Rosa, null)));
        foreach (var table in new[] { "roster.csv", "term/marks.csv", "term/bench-day-one.csv" })
        {
            var text = await File.ReadAllTextAsync(Path.Combine(desk.Folder.Root, table));
            Assert.DoesNotContain("rosa-whitehorse", text, StringComparison.Ordinal);
            Assert.Contains("amara-osei", text, StringComparison.Ordinal);
        }
        Assert.Contains("Amara Osei", await desk.PageAsync("marks/class/term.term"), StringComparison.Ordinal);

        // The school's next list still has her: nobody comes back that way without a word.
        const string list = "id,name\nrosa-whitehorse,Rosa Whitehorse\namara-osei,Amara Osei\n";
        using var answer = await desk.Client.SendAsync(desk.Request("class/class/roster/paste", ("names", list)));
        Assert.Matches(
            "<strong>Rosa Whitehorse</strong>\\s*was erased here, and this list brings the student back",
            await answer.Content.ReadAsStringAsync()
        );
    }

    private async Task<string> OnRecord()
    {
        using var answer = await desk.Client.SendAsync(desk.Request(Rosa + "/record", null));
        await using var zip = new ZipArchive(await answer.Content.ReadAsStreamAsync());
        using var table = new StreamReader(await zip.GetEntry("student.csv")!.OpenAsync());
        return await table.ReadToEndAsync();
    }
}
