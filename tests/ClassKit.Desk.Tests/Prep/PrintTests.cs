using System.Text.RegularExpressions;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Prep;

/// <summary>What is ticked of a lesson comes as one file, as often as the class needs it, its paper counted.</summary>
public sealed class PrintTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Lesson = "lessons/class/thin-air-quick-breads";

    [Fact]
    public async Task What_is_ticked_is_counted_and_comes_as_one_file()
    {
        await desk.ReadyAsync(Lesson);
        using var ticked = await desk.Client.SendAsync(
            desk.Request(
                Lesson + "/tray",
                ("file", "handout.html"),
                ("file", "formula-cards.html"),
                ("file", "guide.html"),
                ("file", "requisition.xlsx"),
                ("as", "print")
            )
        );
        var print = ticked.Headers.Location!.ToString();
        print = print[print.IndexOf("lessons/", StringComparison.Ordinal)..];

        // 24 students, 6 teams (demo-cohort/class.md): a handout of one sheet each, three cards a team on a sheet each; the guide, and the
        // list on top.
        var page = await desk.PageAsync(print);
        Assert.Matches("Not printed here:</strong> Requisition[^<]*It is a workbook", page);
        Assert.DoesNotContain("value=\"requisition.xlsx\"", page, StringComparison.Ordinal);
        var guide = int.Parse(
            Regex
                .Match(page, "Instructor guide(?s:.*?)<td class=\"number\">[0-9]+</td>\\s*<td class=\"number\">([0-9]+)</td>")
                .Groups[1]
                .Value,
            System.Globalization.CultureInfo.InvariantCulture
        );
        Assert.Contains($"{24 + 6 * 3 + guide + 1} sheets of paper", page, StringComparison.Ordinal);

        var file = await desk.PageAsync(print.Replace("/print?", "/print/file?", StringComparison.Ordinal));
        Assert.Equal((24, 6, 24 + 6 + 1), (Copies(file, "handout"), Copies(file, "cards"), Copies(file, "pack")));
        Assert.Equal(
            Regex.Count(file, " id=\"[^\"]*\""),
            Regex.Matches(file, " id=\"([^\"]*)\"").Select(id => id.Groups[1].Value).Distinct().Count()
        );
        Assert.DoesNotContain("<nav", file, StringComparison.Ordinal);
        Assert.DoesNotMatch("href=\"[^\"#:]+\\.html", file);
        Assert.Contains(
            "attachment",
            await Disposition(print.Replace("/print?", "/print/keep?", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Copies_and_sides_follow_what_is_typed()
    {
        await desk.ReadyAsync(Lesson);
        Assert.Contains(
            "7 sheets of paper",
            await desk.PageAsync(Lesson + "/print?file=handout.html&copies.handout.html=3&sides=one"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "4 sheets of paper",
            await desk.PageAsync(Lesson + "/print?file=handout.html&copies.handout.html=3"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "25 sheets of paper",
            await desk.PageAsync(Lesson + "/print?file=handout.html&copies.handout.html=no"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "1001 sheets of paper",
            (await desk.PageAsync(Lesson + "/print?file=handout.html&copies.handout.html=999999")).Replace(
                ",",
                "",
                StringComparison.Ordinal
            ),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task What_is_ticked_stays_ticked_while_other_pages_are_looked_at()
    {
        await desk.ReadyAsync(Lesson);
        using var looked = await desk.Client.SendAsync(desk.Request(Lesson + "/tray", ("file", "handout.html"), ("page", "guide.html")));
        var page = await desk.PageAsync(looked.Headers.Location!.ToString().Split('/', 3)[2]);
        Assert.Matches("value=\"handout.html\" checked", page);
        Assert.Contains("<h2 id=\"open-page\">Instructor guide</h2>", page, StringComparison.Ordinal);
        using var nothing = await desk.Client.SendAsync(desk.Request(Lesson + "/tray", ("as", "print")));
        Assert.Contains(
            "Nothing is ticked",
            await desk.PageAsync(nothing.Headers.Location!.ToString().Split('/', 3)[2]),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task What_somebody_must_keep_away_from_is_said_where_the_lesson_is_chosen()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        await File.WriteAllTextAsync(file, before.Replace("[sesame, tree nuts]", "[egg]", StringComparison.Ordinal));
        var page = System.Net.WebUtility.HtmlDecode(await desk.PageAsync("lessons/class"));
        await File.WriteAllTextAsync(file, before);
        Assert.Matches("keeps away from <strong>egg</strong>, which is in [^<]*Popovers", page);
    }

    [Fact]
    public async Task A_lesson_that_cannot_be_worked_out_is_not_shown_as_though_it_held_nothing_of_that()
    {
        const string Unknown = "Nobody has held it against this class’s allergies.";
        var lesson = Path.Combine(desk.Folder.Root, "lessons", "gone-astray");
        Directory.CreateDirectory(lesson);
        await File.WriteAllTextAsync(
            Path.Combine(lesson, "lesson.md"),
            "---\nid: gone-astray\n---\n\n# Gone astray\n\n## Formulas\n\n- [Gone](gone.md)\n"
        );

        var page = System.Net.WebUtility.HtmlDecode(await desk.PageAsync("lessons/class"));

        Directory.Delete(lesson, recursive: true);
        Assert.Contains("Gone astray", page, StringComparison.Ordinal);
        Assert.Contains(Unknown, page, StringComparison.Ordinal);
        Assert.DoesNotContain(Unknown, System.Net.WebUtility.HtmlDecode(await desk.PageAsync("lessons/class")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_that_is_open_while_the_class_changes_is_prepared_again()
    {
        await desk.ReadyAsync(Lesson);
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        await File.WriteAllTextAsync(file, before + "\n");
        using (var asked = await desk.Client.SendAsync(desk.Request(Lesson + "/page/handout.html", null)))
        {
            await desk.OverAsync(asked);
            using var over = await desk.Client.SendAsync(desk.Request(asked.Headers.Location!.ToString().Split('/', 3)[2], null));
            Assert.EndsWith(Lesson + "/page/handout.html", over.Headers.Location!.ToString(), StringComparison.Ordinal);
        }
        Assert.Contains("handout", await desk.PageAsync(Lesson + "/page/handout.html"), StringComparison.Ordinal);

        // What is ticked at that moment stays ticked.
        await File.WriteAllTextAsync(file, before);
        using var ticked = await desk.Client.SendAsync(desk.Request(Lesson + "/tray", ("file", "handout.html"), ("as", "print")));
        await desk.OverAsync(ticked);
        using var on = await desk.Client.SendAsync(desk.Request(ticked.Headers.Location!.ToString().Split('/', 3)[2], null));
        Assert.EndsWith(Lesson + "?file=handout.html", on.Headers.Location!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_kept_can_be_opened_from_where_it_is_said()
    {
        var said = await desk.DoneAsync(Lesson + "/keep");
        Assert.Contains($"href=\"{Lesson}/kept/index.html\"", said, StringComparison.Ordinal);
        Assert.Contains(Path.Combine(desk.Folder.Root, "packs", "class"), said, StringComparison.Ordinal);
        Assert.Contains("handout.html", await desk.PageAsync(Lesson + "/kept/index.html"), StringComparison.Ordinal);
        Assert.Equal(404, await desk.StatusAsync(desk.Request(Lesson + "/kept/..%2F..%2Fclass.md", null)));
    }

    private static int Copies(string file, string style) => Regex.Count(file, $"<div class=\"tray-page [^\"]*\\b{style}\\b");

    private async Task<string> Disposition(string path)
    {
        using var answer = await desk.Client.SendAsync(desk.Request(path, null));
        return answer.Content.Headers.ContentDisposition!.ToString();
    }
}
