using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Serving;

/// <summary>A browser that opens its last pages again asks for addresses that only take forms: it is led to the page above.</summary>
public sealed class LeadBackTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Theory]
    [InlineData("class/class/roster/paste", "class/class")]
    [InlineData("marks/class/term.term/works", "marks/class/term.term")]
    [InlineData("begin", "")]
    public async Task An_address_that_takes_forms_leads_to_the_page_above_it(string from, string to)
    {
        using var answer = await desk.Client.SendAsync(desk.Request(from, null));
        Assert.Equal(303, (int)answer.StatusCode);
        Assert.Equal($"/{desk.Desk.Keys.Room}/{to}", answer.Headers.Location!.ToString());
    }

    [Fact]
    public void Every_address_that_takes_something_can_be_looked_at()
    {
        var looked = desk.Routes.Where(route => route.Methods.Contains("GET")).Select(route => route.Path).ToHashSet();
        Assert.DoesNotContain(desk.Routes, route => route.Methods.Contains("POST") && !looked.Contains(route.Path));
    }
}
