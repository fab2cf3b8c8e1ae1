using System.Net;
using System.Text.RegularExpressions;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Attacks;

/// <summary>
/// What somebody may type or paste by malice or by accident, into every field of every form that takes text: it comes back as text or is
/// refused in words, and the folder still holds.
/// </summary>
public sealed partial class HostileFieldsTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private static readonly string[] Pages =
    [
        "",
        "class/class",
        "class/class/arranged",
        "rounds/class/new?lesson=one-tin-three-lifts",
        "marks/class/new",
        "marks/class/term.term",
        "marks/class/term.term/work/1",
        "marks/class/term.term/work/4",
        "marks/class/term.term/freeze",
        "people/class/amara-osei",
        "people/class/amara-osei/erase",
        "sums",
        "sums/soda-and-acid",
        "texts",
    ];

    /// <summary>
    /// From memory, after lists that testers of web pages use: markup, formulas, paths, directions of writing, control characters, length.
    /// </summary>
    private static readonly string[] Corpus =
    [
        "<script>alert(1)</script>\"><img src=x onerror=alert(1)>",
        "=HYPERLINK(\"http://example.org\",\"x\")",
        "../../../etc/passwd",
        "[a: {b}, \"c\" # d",
        "\u202Egnp.exe\u2066 \u05D0\u05D1\u05D2 \u0627\u0644\u062E\u0628\u0632",
        "a\u0000b\u0007c\u001B[31m",
        "{{7*7}}${7*7}%s%n",
        new string('W', 5_000),
    ];

    [Fact]
    public async Task Whatever_is_typed_into_any_field_is_text()
    {
        var tried = 0;
        foreach (var page in Pages)
        {
            foreach (var nasty in Corpus)
            {
                foreach (
                    var form in Forms(await desk.PageAsync(page))
                        .Where(form => form.Fields.Any(field => field.IsTyped) && form.Action is not ("close" or "begin"))
                )
                {
                    using var answer = await desk.Client.SendAsync(
                        desk.Request(
                            form.Action,
                            [
                                .. form
                                    .Fields.Where(field => field.Name != "token")
                                    .Select(field => (field.Name, field.IsTyped ? nasty : field.Value)),
                            ]
                        )
                    );
                    Assert.True((int)answer.StatusCode is >= 200 and < 500, $"{form.Action}: {(int)answer.StatusCode}");
                    Plain(form.Action, await answer.Content.ReadAsStringAsync());
                    tried++;
                }
                Plain(page, await desk.PageAsync(page));
            }
        }
        Assert.InRange(tried, 60, 1_000);
        Assert.Empty(desk.Ours);

        // Whatever was taken holds: the class, its list, its term and every page that is made of them.
        Assert.Empty(desk.Folder.Class("class")!.Profile.Problems);
        foreach (var page in Pages)
            Assert.Equal(200, await desk.StatusAsync(desk.Request(page, null)));
    }

    /// <summary>The forms of a page that are sent as they are typed, with what stands in them.</summary>
    internal static IEnumerable<(string Action, IReadOnlyList<(string Name, string Value, bool IsTyped)> Fields)> Forms(string page) =>
        FormText()
            .Matches(page)
            .Where(form => !form.Value.Contains("multipart", StringComparison.Ordinal))
            .Select(form =>
                (
                    WebUtility.HtmlDecode(form.Groups["action"].Value),
                    (IReadOnlyList<(string, string, bool)>)
                        [
                            .. InputText()
                                .Matches(form.Value)
                                .Where(input =>
                                    Of(input.Value, "name").Length > 0 && Of(input.Value, "type") is not ("checkbox" or "radio" or "file")
                                )
                                .Select(input => (Of(input.Value, "name"), Of(input.Value, "value"), Of(input.Value, "type") != "hidden")),
                            .. AreaText().Matches(form.Value).Select(area => (area.Groups["name"].Value, "", true)),
                            .. SelectText()
                                .Matches(form.Value)
                                .Select(select =>
                                    (
                                        select.Groups["name"].Value,
                                        ChosenText().Match(select.Value) is { Success: true } chosen
                                            ? WebUtility.HtmlDecode(
                                                chosen.Groups["value"].Success ? chosen.Groups["value"].Value : chosen.Groups["text"].Value
                                            )
                                            : "",
                                        false
                                    )
                                ),
                        ]
                )
            );

    private static void Plain(string where, string page)
    {
        Assert.False(page.Contains("<script>alert", StringComparison.Ordinal), where);
        Assert.False(page.Contains("<img src=x", StringComparison.Ordinal), where);
        Assert.False(page.Contains('\0', StringComparison.Ordinal), where);
    }

    private static string Of(string tag, string attribute) =>
        WebUtility.HtmlDecode(Regex.Match(tag, $" {attribute}=\"(?<value>[^\"]*)\"").Groups["value"].Value);

    [GeneratedRegex("<form method=\"post\" action=\"(?<action>[^\"]*)\".*?</form>", RegexOptions.Singleline)]
    private static partial Regex FormText();

    [GeneratedRegex("<input [^>]*>")]
    private static partial Regex InputText();

    [GeneratedRegex("<textarea [^>]*name=\"(?<name>[^\"]*)\"")]
    private static partial Regex AreaText();

    [GeneratedRegex("<select [^>]*name=\"(?<name>[^\"]*)\".*?</select>", RegexOptions.Singleline)]
    private static partial Regex SelectText();

    [GeneratedRegex("<option(?: value=\"(?<value>[^\"]*)\")? selected(?:=\"[^\"]*\")?>(?<text>[^<]*)<")]
    private static partial Regex ChosenText();
}
