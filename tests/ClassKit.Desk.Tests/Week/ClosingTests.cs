using System.Reflection;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Opening;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Week;

/// <summary>Closing the desk: work that goes on is told of first, and the last page says what is true.</summary>
public sealed class ClosingTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task Work_that_goes_on_is_told_of_before_the_desk_closes()
    {
        using var goesOn = new ManualResetEventSlim();
        var jobs = (JobQueue)typeof(OpenDesk).GetField("_jobs", BindingFlags.Instance | BindingFlags.NonPublic)!.GetValue(desk.Desk)!;
        jobs.Add(new("Mark what came back", "", "This week", _ =>
            {
                goesOn.Wait();
                return JobEnd.Well;
            }));
        var asked = await Sent();
        goesOn.Set();
        Assert.Contains("Mark what came back. If you close the desk now, nothing comes of it", asked, StringComparison.Ordinal);
        Assert.False(desk.Desk.Closing.IsCompleted);

        var last = await Sent(("really", "yes"));
        Assert.Contains("The invented class goes away with it", last, StringComparison.Ordinal);
        Assert.DoesNotContain("Close the desk<", last, StringComparison.Ordinal);
        // It closes when the last page has been sent, which may be a moment after it was read here.
        await desk.Desk.Closing;
    }

    private async Task<string> Sent(params (string Name, string Value)[] fields)
    {
        using var answer = await desk.Client.SendAsync(desk.Request("close", fields));
        return await answer.Content.ReadAsStringAsync();
    }
}
