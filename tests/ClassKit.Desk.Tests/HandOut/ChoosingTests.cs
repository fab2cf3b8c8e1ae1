using System.Text.RegularExpressions;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Tests.Tools;
using ClassKit.UseCases.Dealing;

namespace ClassKit.Desk.Tests.HandOut;

/// <summary>What is handed out is of the lesson that was chosen, and is changed without beginning again.</summary>
public sealed class ChoosingTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task Another_lesson_than_the_one_shown_is_shown_first()
    {
        using var answer = await desk.Client.SendAsync(
            desk.Request("rounds/class/try", ("shown", "no-oven-in-the-house"), ("lesson", "thin-air-quick-breads"), ("seed", "1"))
        );
        Assert.EndsWith("rounds/class/new?lesson=thin-air-quick-breads", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains(
            "Which exercises of “Thin Air",
            System.Net.WebUtility.HtmlDecode(await desk.PageAsync("rounds/class/new?lesson=thin-air-quick-breads")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task What_was_ticked_and_typed_is_there_to_be_changed()
    {
        var id = System
            .Text.RegularExpressions.Regex.Match(
                await desk.PageAsync("rounds/class/new?lesson=thin-air-quick-breads"),
                "name=\"exercise\" value=\"([^\"]*)\""
            )
            .Groups[1]
            .Value;
        await desk.DoneAsync(
            "rounds/class/try",
            ("shown", "thin-air-quick-breads"),
            ("lesson", "thin-air-quick-breads"),
            ("exercise", id),
            ("due", "2026-12-01T17:00"),
            ("seed", "31")
        );
        var page = await desk.PageAsync("rounds/class/new?lesson=thin-air-quick-breads&again=yes");
        Assert.Matches($"name=\"exercise\" value=\"{id}\" checked", page);
        Assert.Contains("value=\"2026-12-01T17:00\"", page, StringComparison.Ordinal);
        Assert.Contains("value=\"31\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("checked", await desk.PageAsync("rounds/class/new?lesson=thin-air-quick-breads"), StringComparison.Ordinal);
    }

    /// <summary>One slip would hand out more than anybody can do, other exercises than those that were ticked, or work that is late at once.</summary>
    [Fact]
    public async Task What_cannot_be_meant_is_asked_about_on_the_form_with_everything_still_there()
    {
        var nothing = await Refused(("shown", "practice-bank"), ("lesson", "practice-bank"), ("title", "Scaling again"), ("seed", "1"));
        Assert.Contains(
            "Nothing is ticked, and everybody would get every exercise of the practice bank",
            nothing,
            StringComparison.Ordinal
        );
        Assert.Contains("value=\"Scaling again\"", nothing, StringComparison.Ordinal);

        var id = Regex.Match(nothing, "name=\"exercise\" value=\"([^\"]*)\"").Groups[1].Value;
        using var other = await desk.Client.SendAsync(
            desk.Request("rounds/class/pick", ("shown", "practice-bank"), ("lesson", "thin-air-quick-breads"), ("exercise", id))
        );
        var to = other.Headers.Location!.ToString();
        Assert.Contains(
            "What you had ticked of “The practice bank” is not of “Thin Air",
            System.Net.WebUtility.HtmlDecode(await desk.PageAsync(to[to.IndexOf("rounds/", StringComparison.Ordinal)..])),
            StringComparison.Ordinal
        );

        (string, string)[] asked = [("shown", "practice-bank"), ("lesson", "practice-bank"), ("title", "Friday"), ("exercise", id)];
        var wrong = await Refused([.. asked, ("minutes", "abc"), ("seed", "1")]);
        Assert.Contains("The minutes are “abc”", wrong, StringComparison.Ordinal);
        Assert.Matches($"value=\"{id}\" checked", wrong);
        Assert.Contains("value=\"abc\"", wrong, StringComparison.Ordinal);

        var over = await Refused([.. asked, ("due", "2026-11-20T17:00"), ("seed", "1")]);
        Assert.Contains("It would be due on Friday 20 November 2026, 17:00, and that is over", over, StringComparison.Ordinal);
        Assert.Contains("name=\"late\"", over, StringComparison.Ordinal);
        await desk.DoneAsync("rounds/class/try", [.. asked, ("due", "2026-11-20T17:00"), ("late", "yes"), ("seed", "1")]);
        Assert.Contains("due Friday 20 November 2026", await desk.PageAsync("rounds/class/tried"), StringComparison.Ordinal);
    }

    /// <summary>Exercises without a lesson are called by what was typed, also where somebody is added to the round later.</summary>
    [Fact]
    public async Task Practice_from_the_bank_has_a_name_of_its_own()
    {
        var page = await desk.PageAsync("rounds/class/new?lesson=practice-bank");
        Assert.Matches("name=\"title\" value=\"Practice [0-9]+\" required", page);
        var id = Regex.Match(page, "name=\"exercise\" value=\"([^\"]*)\"").Groups[1].Value;
        await desk.DoneAsync(
            "rounds/class/try",
            ("lesson", "practice-bank"),
            ("title", "Scaling, for Friday"),
            ("exercise", id),
            ("seed", "7")
        );
        Assert.Contains(
            "Marked by “Marks for calculations”, which comes with the program",
            await desk.PageAsync("rounds/class/tried"),
            StringComparison.Ordinal
        );
        await desk.DoneAsync("rounds/class/deal");
        var round = desk
            .Folder.Rounds(desk.Folder.Class("class")!)
            .First(round => round.Name.EndsWith("practice-bank", StringComparison.Ordinal));
        Assert.Equal("Scaling, for Friday", DealtFolder.Read(round.Dealt).Model!.LessonTitle);

        var again = new DealPaths(
            LessonEntry.Bank.Path,
            Path.Combine(desk.Folder.Root, "roster.csv"),
            new(new([id], [], [], null, null), false, 7)
        )
        {
            Into = round.Dealt,
        };
        Assert.Equal("Scaling, for Friday", again.Read().Model!.Set.Title);
    }

    /// <summary>Back, and once more: the same workbooks in a second round would be taken in twice and count twice.</summary>
    [Fact]
    public async Task What_is_in_their_hands_is_not_handed_out_again()
    {
        await desk.DoneAsync("rounds/class/try", ("lesson", "no-oven-in-the-house"), ("seed", "41"));
        await desk.DoneAsync("rounds/class/deal");
        var rounds = desk.Folder.Rounds(desk.Folder.Class("class")!);

        using (var back = await desk.Client.SendAsync(desk.Request("rounds/class/tried", null)))
            Assert.EndsWith($"rounds/class/{rounds[0].Name}", back.Headers.Location!.ToString(), StringComparison.Ordinal);
        using (var again = await desk.Client.SendAsync(desk.Request("rounds/class/deal")))
            Assert.Contains("in their hands already", await again.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(rounds.Count, desk.Folder.Rounds(desk.Folder.Class("class")!).Count);

        // The same exercises with other numbers are another set.
        await desk.DoneAsync("rounds/class/try", ("lesson", "no-oven-in-the-house"), ("seed", "42"));
        await desk.DoneAsync("rounds/class/deal");
        Assert.Equal(rounds.Count + 1, desk.Folder.Rounds(desk.Folder.Class("class")!).Count);
    }

    private async Task<string> Refused(params (string Name, string Value)[] typed)
    {
        using var answer = await desk.Client.SendAsync(desk.Request("rounds/class/try", typed));
        Assert.Equal(200, (int)answer.StatusCode);
        return System.Net.WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task A_day_and_time_is_by_somebodys_clocks_and_the_class_keeps_whose()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        Assert.DoesNotContain("name=\"zone\"", await desk.PageAsync("rounds/class/new"), StringComparison.Ordinal);
        await File.WriteAllTextAsync(file, before.Replace("time zone: Europe/Paris\n", "", StringComparison.Ordinal));
        var zone = System
            .Text.RegularExpressions.Regex.Match(
                await desk.PageAsync("rounds/class/new"),
                "<option value=\"(?<id>[^\"]*)\">[^<]*as on this computer"
            )
            .Groups["id"]
            .Value;
        Assert.Equal(
            TimeZoneInfo.Local.GetUtcOffset(RunningDesk.Now),
            TimeZoneInfo.FindSystemTimeZoneById(zone).GetUtcOffset(RunningDesk.Now)
        );

        await desk.DoneAsync("rounds/class/try", ("lesson", "thin-air-quick-breads"), ("zone", zone), ("seed", "1"));
        Assert.DoesNotContain("time zone:", await File.ReadAllTextAsync(file), StringComparison.Ordinal);
        await desk.DoneAsync(
            "rounds/class/try",
            ("lesson", "thin-air-quick-breads"),
            ("due", "2026-12-01T17:00"),
            ("zone", zone),
            ("seed", "1")
        );
        Assert.Contains($"\ntime zone: {zone}\n", await File.ReadAllTextAsync(file), StringComparison.Ordinal);
        await desk.DoneAsync("rounds/class/deal");
        Assert.Contains(
            "<p>Due Tuesday 1 December 2026, 17:00",
            await desk.PageAsync("rounds/class/" + desk.Folder.Rounds(desk.Folder.Class("class")!)[0].Name),
            StringComparison.Ordinal
        );
        await File.WriteAllTextAsync(file, before);
    }

    [Fact]
    public async Task A_lesson_is_chosen_by_length_breads_and_what_is_practised_and_the_bank_is_no_lesson()
    {
        // lessons/one-tin-three-lifts/lesson.md: its period, formulas and exercises.
        var page = System.Text.RegularExpressions.Regex.Replace(
            System.Net.WebUtility.HtmlDecode(await desk.PageAsync("lessons/class")),
            "<[^>]*>|\\s+",
            " "
        );
        Assert.Matches("One Tin, Three Lifts *150 min: Batter buns, Popovers, Buttermilk muffins *8 exercises, [a-z ]+: ", page);
        Assert.Matches(
            "<optgroup label=\"Without a lesson\">\\s*<option value=\"practice-bank\"",
            await desk.PageAsync("rounds/class/new")
        );
        Assert.Contains(
            "The practice bank belongs to no lesson",
            await desk.PageAsync("rounds/class/new?lesson=practice-bank"),
            StringComparison.Ordinal
        );
    }
}
