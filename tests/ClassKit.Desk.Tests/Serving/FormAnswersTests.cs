using System.Text.RegularExpressions;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Serving;

/// <summary>
/// What answers a form has an address that can be looked at as often as somebody likes: a browser that goes back to it, or loads it again,
/// does not ask whether the form is to be sent once more (HTML Living Standard, 7.4.2.2: a POST is resubmitted on reload; RFC 9110, 15.4.4:
/// 303 leads to something to look at).
/// </summary>
public sealed partial class FormAnswersTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    /// <summary>With the desk closed there is nothing to go back to.</summary>
    private const string Closing = "close";

    /// <summary>All addresses that take forms, found in the server, with names that nothing has: each says so at an address of its own.</summary>
    [Fact]
    public async Task No_form_is_answered_in_its_own_place()
    {
        var taking = desk.Routes.Where(route => route.Methods.Contains("POST")).Select(route => route.Path.TrimStart('/')).ToList();
        Assert.True(taking.Count > 40, "The server takes fewer forms than it has.");
        List<string> inPlace = [];
        foreach (var path in taking.Where(path => path != Closing && Step().IsMatch(path)))
        {
            using var answer = await desk.Client.SendAsync(Sent(Step().Replace(path, "nobody-of-this-name")));
            // What reads files refuses what is none before it looks at anything.
            if ((int)answer.StatusCode is not (303 or 403))
                inPlace.Add($"{path}: {(int)answer.StatusCode}");
        }
        Assert.Empty(inPlace);
    }

    [Fact]
    public async Task A_refused_form_is_shown_with_why_as_often_as_it_is_looked_at()
    {
        using var answer = await desk.Client.SendAsync(Sent("classes/new", ("name", "")));
        Assert.Equal(303, (int)answer.StatusCode);
        var page = answer.Headers.Location!.ToString();
        page = page[page.IndexOf("answers/", StringComparison.Ordinal)..];

        for (var time = 0; time < 2; time++)
            Assert.Contains("The class has no name", await desk.PageAsync(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_there_is_not_there_by_its_status_too()
    {
        using var answer = await desk.Client.SendAsync(Sent("class/nobody"));
        var page = answer.Headers.Location!.ToString();
        Assert.Equal(404, await desk.StatusAsync(desk.Request(page[page.IndexOf("answers/", StringComparison.Ordinal)..], null)));
        Assert.Equal(404, await desk.StatusAsync(desk.Request("answers/100000", null)));
        Assert.Equal(404, await desk.StatusAsync(desk.Request("answers/-1", null)));
    }

    /// <summary>A script of the desk's own takes the page apart, and leaves nothing to go back to.</summary>
    [Fact]
    public async Task A_script_has_its_answer_at_once()
    {
        var request = desk.Request("classes/new", ("name", ""));
        request.Headers.Add("Sec-Fetch-Mode", "same-origin");
        Assert.Equal(200, await desk.StatusAsync(request));
    }

    private HttpRequestMessage Sent(string path, params (string Name, string Value)[] fields)
    {
        var request = desk.Request(path, fields);
        request.Headers.Add("Sec-Fetch-Mode", "navigate");
        return request;
    }

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Step();
}
