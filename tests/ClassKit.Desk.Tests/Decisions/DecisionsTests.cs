using System.IO.Compression;
using System.Net;
using System.Text.RegularExpressions;
using ClassKit.Content.Recognition;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Decisions;

/// <summary>
/// Decisions on the invented class's work: several at once under one reason, taken back together, and files that say from whom they are
/// only once somebody says it.
/// </summary>
public sealed class DecisionsTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Round = "rounds/class/01-one-tin-three-lifts";

    private static void GroupsCountEverybodyOnceExceptionsFirst(string page)
    {
        var groups = Regex
            .Matches(page, "<tr class=\"group\"[^>]*><th[^>]*>(?<name>[^:<]*): (?<count>[0-9]+)")
            .Select(match =>
                (
                    Name: match.Groups["name"].Value,
                    Count: int.Parse(match.Groups["count"].Value, System.Globalization.CultureInfo.InvariantCulture)
                )
            )
            .ToList();
        Assert.Equal(["Could not be read", "To decide", "Missing", "In"], groups.Select(group => group.Name));
        Assert.Equal(24, groups.Sum(group => group.Count));
    }

    [Fact]
    public async Task Several_are_decided_at_once_and_taken_back_together()
    {
        await desk.DoneAsync("rounds/class/try", ("lesson", "one-tin-three-lifts"), ("seed", "2026"));
        await desk.DoneAsync("rounds/class/deal");
        await WhatStudentsGetIsTheirWorkbooksAlone();
        await desk.DoneAsync(Round + "/returns/invented");
        // What the class report says of a file stands where files are taken in, too.
        var returns = await desk.PageAsync(Round + "/returns");
        Assert.Contains("Two files may have been swapped", returns, StringComparison.Ordinal);
        GroupsCountEverybodyOnceExceptionsFirst(returns);
        var page = await desk.PageAsync(Round + "/decisions");
        Assert.Equal("20", Regex.Match(page, "Needs your word <span class=\"small\">([0-9]+)</span>").Groups[1].Value);
        Assert.Equal(1, Regex.Count(page, "<strong>Look for:</strong>"));
        var part = Regex.Match(page, "name=\"part\" value=\"(?<part>[^\"]*)\"").Groups["part"].Value;

        using (
            var wrong = await desk.Client.SendAsync(
                desk.Request(
                    Round + "/decisions/decide",
                    ("part", part),
                    ("points.amara-osei", "2"),
                    ("points.aroha-ngata", "3"),
                    ("reason", "Fits the tray")
                )
            )
        )
        {
            var said = WebUtility.HtmlDecode(await wrong.Content.ReadAsStringAsync());
            Assert.Contains("The points of Aroha Ngata are “3”", said, StringComparison.Ordinal);
            Assert.Contains("value=\"Fits the tray\"", said, StringComparison.Ordinal);
        }
        var corrections = Path.Combine(Dealt.Graded, "corrections.csv");
        Assert.False(File.Exists(corrections));

        var changes = await desk.DoneAsync(
            Round + "/decisions/decide",
            ("part", part),
            ("points.amara-osei", "2"),
            ("points.aroha-ngata", "1,5"),
            ("reason.aroha-ngata", "No sign is named"),
            ("points.bao-nguyen", "0"),
            ("reason", "Fits the tray")
        );
        Assert.Contains("Points that did not count before count now", changes, StringComparison.Ordinal);
        Assert.DoesNotContain(part, changes, StringComparison.Ordinal);
        Assert.Equal(
            [
                "student,part,points,reason",
                $"amara-osei,{part},2,Fits the tray",
                $"aroha-ngata,{part},1.5,No sign is named",
                $"bao-nguyen,{part},0,Fits the tray",
            ],
            await File.ReadAllLinesAsync(corrections)
        );
        Assert.Contains(
            "Needs your word <span class=\"small\">17</span>",
            await desk.PageAsync(Round + "/decisions"),
            StringComparison.Ordinal
        );

        await desk.DoneAsync(Round + "/decisions/undo", ("back", part + ".amara-osei"), ("back", part + ".bao-nguyen"));
        Assert.Equal(["student,part,points,reason", $"aroha-ngata,{part},1.5,No sign is named"], await File.ReadAllLinesAsync(corrections));
        Assert.Contains(
            "Needs your word <span class=\"small\">19</span>",
            await desk.PageAsync(Round + "/decisions"),
            StringComparison.Ordinal
        );

        await ADecisionThatDoesNotCountYetIsTold(corrections, part);
        await File.WriteAllTextAsync(Path.Combine(Dealt.Returned, "scan 0001.xlsx"), "no workbook");
        await desk.DoneAsync(Round + "/returns/judge");
        Assert.Contains("scan 0001.xlsx", await desk.PageAsync(Round + "/decisions"), StringComparison.Ordinal);
        await desk.DoneAsync(Round + "/decisions/whose", ("file", "scan 0001.xlsx"), ("student", "rosa-whitehorse"));
        Assert.True(File.Exists(Path.Combine(Dealt.Returned, "rosa-whitehorse scan 0001.xlsx")));
        Assert.Matches(
            "Rosa Whitehorse</a></th><td>a file that cannot be read",
            Regex.Replace(await desk.PageAsync(Round + "/returns"), @">\s+<", "><")
        );
        Assert.Equal(
            404,
            await desk.StatusAsync(
                desk.Request(Round + "/decisions/whose", ("file", "../graded/grades.json"), ("student", "rosa-whitehorse"))
            )
        );
        await AnEmptyWorkbookIsAskedAbout();
        await WhatLiesInAnArchiveIsDecidedAsWell();
        await WhatCountsForNobodyGoesWhereItBelongs();

        await WhatStudentsGetByNameIsPrintedWithALessonsPages();

        // What was judged says what the class can be expected to earn where exercises are chosen, and what to teach again with what a
        // student wrote.
        Assert.Contains("expected here:", await desk.PageAsync("rounds/class/new?lesson=one-tin-three-lifts"), StringComparison.Ordinal);
        Assert.Matches("show the method.(?s:.*?)One of them wrote <code>=", await desk.PageAsync(Round + "/again"));
        await PracticeThatFollowedIsTakenInLikeAnyOther();
        await WhoWasAbsentIsNotWaitedFor();

        // With two rounds, a term and decisions there is something to say on every page.
        List<string> faults = [];
        Assert.InRange(await PlainWords.ReadAsync(desk, faults), 30, 500);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        await ARoundIsTakenAwayAndPutBack();
    }

    /// <summary>The table is written before the grades: a marking that was broken off in between leaves them apart.</summary>
    private async Task ADecisionThatDoesNotCountYetIsTold(string corrections, string part)
    {
        const string Told = "1 decision stands in your table, and the grades were not worked out by it";
        await File.WriteAllLinesAsync(corrections, [.. await File.ReadAllLinesAsync(corrections), $"amara-osei,{part},1,Shown on paper"]);
        Assert.Contains(Told, await desk.PageAsync(Round + "/decisions"), StringComparison.Ordinal);

        await desk.DoneAsync(Round + "/decisions/again");
        Assert.DoesNotContain(Told, await desk.PageAsync(Round + "/decisions"), StringComparison.Ordinal);

        await desk.DoneAsync(Round + "/decisions/undo", ("back", part + ".amara-osei"));
        Assert.DoesNotContain("Decisions that do not count yet", await desk.PageAsync(Round + "/decisions"), StringComparison.Ordinal);
    }

    /// <summary>What is said in the round stands in the term's table, and nobody is asked for work any more that will not come.</summary>
    private async Task WhatStudentsGetByNameIsPrintedWithALessonsPages()
    {
        const string Lesson = "lessons/class/one-tin-three-lifts";
        await desk.ReadyAsync(Lesson);
        var names = Regex
            .Matches(await desk.PageAsync(Lesson), "name=\"file\" value=\"(?<name>[^\"]*/[^\"]*)\"")
            .Select(box => box.Groups["name"].Value)
            .Where(name => name.StartsWith("01-", StringComparison.Ordinal))
            .ToList();
        Assert.Equal(["01-one-tin-three-lifts/dealt/sheets-to-print.html", "01-one-tin-three-lifts/graded/feedback-to-print.html"], names);
        using var ticked = await desk.Client.SendAsync(
            desk.Request(Lesson + "/tray", [("file", "handout.html"), .. names.Select(name => ("file", name)), ("as", "print")])
        );
        var print = ticked.Headers.Location!.ToString();
        print = print[print.IndexOf("lessons/", StringComparison.Ordinal)..];

        // What each file takes stands on its own list.
        var alone = names
            .Select(name =>
                int.Parse(
                    Regex
                        .Match(File.ReadAllText(Path.Combine(Path.GetDirectoryName(Dealt.Folder)!, name)), "([0-9]+) sheets of paper")
                        .Groups[1]
                        .Value,
                    System.Globalization.CultureInfo.InvariantCulture
                )
            )
            .ToList();
        Assert.Contains($"{alone.Sum() + 24 + 1} sheets of paper", await desk.PageAsync(print), StringComparison.Ordinal);
        var file = await desk.PageAsync(print.Replace("/print?", "/print/file?", StringComparison.Ordinal));
        Assert.Equal(
            (1, 1),
            (
                Regex.Count(file, "<div class=\"tray-page sheet to-print"),
                Regex.Count(file, "<div class=\"tray-page feedback brief to-print")
            )
        );
        Assert.Equal(
            Regex.Count(file, " id=\"[^\"]*\""),
            Regex.Matches(file, " id=\"([^\"]*)\"").Select(id => id.Groups[1].Value).Distinct().Count()
        );
    }

    /// <summary>
    /// Practice after a round becomes a round; its workbooks find their way there from wherever they are handed in, and more practice can be
    /// made.
    /// </summary>
    private async Task PracticeThatFollowedIsTakenInLikeAnyOther()
    {
        await desk.DoneAsync(Round + "/again/practice", ("minutes", "20"));
        var made = await desk.PageAsync(Round + "/again");
        Assert.DoesNotContain("again/practice\"", made, StringComparison.Ordinal);
        using (var answer = await desk.Client.SendAsync(desk.Request(Round + "/again/round", [])))
            Assert.EndsWith("/rounds/class/03-after-01-one-tin-three-lifts", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
        var follows = desk.Folder.Round(desk.Folder.Class("class")!, "03-after-01-one-tin-three-lifts")!;
        var books = Directory.EnumerateFiles(Path.Combine(follows.Dealt, "workbooks")).Order(StringComparer.Ordinal).Take(2).ToList();
        Assert.Contains(
            $"dealt/pages/{Path.GetFileNameWithoutExtension(books[0])}.html",
            await desk.PageAsync("rounds/class/" + follows.Name),
            StringComparison.Ordinal
        );

        using (var files = new MultipartFormDataContent { { new StringContent(desk.Desk.Keys.FormToken), "token" } })
        {
            foreach (var book in books)
                files.Add(new ByteArrayContent(await File.ReadAllBytesAsync(book)), "files", Path.GetFileName(book));
            using var request = desk.Request(Round + "/returns", []);
            request.Content = files;
            using var answer = await desk.Client.SendAsync(request);
            Assert.Contains("round 3: they lie there now", WebUtility.HtmlDecode(await desk.OverAsync(answer)), StringComparison.Ordinal);
        }
        Assert.Equal(
            books.Select(File.ReadAllBytes).Select(Convert.ToHexString).Order(),
            Directory.EnumerateFiles(follows.Returned).Select(File.ReadAllBytes).Select(Convert.ToHexString).Order()
        );
        Assert.DoesNotContain("Files that count for nobody", await desk.PageAsync(Round + "/decisions"), StringComparison.Ordinal);
        Assert.Contains(
            "came back empty",
            await desk.PageAsync("rounds/class/03-after-01-one-tin-three-lifts/returns"),
            StringComparison.Ordinal
        );

        // One more can be made, with other numbers.
        await desk.DoneAsync(Round + "/again/practice", ("minutes", "20"));
        Assert.True(Directory.Exists(Dealt.FollowUp));
        Assert.Contains("round 3</a>", await desk.PageAsync(Round + "/again"), StringComparison.Ordinal);
    }

    private async Task WhoWasAbsentIsNotWaitedFor()
    {
        Assert.Contains("no term counts this round yet", await desk.PageAsync(Round + "/returns"), StringComparison.Ordinal);
        Assert.Equal(
            303,
            await desk.StatusAsync(desk.Request("marks/class/new", ("title", "Autumn"), ("round", "01-one-tin-three-lifts")))
        );
        // What was handed out once does not count twice.
        var key = desk
            .Folder.Keyed(ContentKind.Term)
            .Single(term => term.Path == Path.Combine(desk.Folder.Root, "terms", "class", "autumn.md"))
            .Key;
        using (
            var twice = await desk.Client.SendAsync(
                desk.Request(
                    $"marks/class/{key}/works",
                    ("work", "Practice bis"),
                    ("kind", "calculations"),
                    ("category", "Calculations"),
                    ("round", "01-one-tin-three-lifts")
                )
            )
        )
            Assert.Contains("round 1, counts already, as “", await twice.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        var page = WebUtility.HtmlDecode(await desk.PageAsync(Round + "/returns"));
        Assert.Contains("Absent:</b> It counts as nothing earned, 0 %", page, StringComparison.Ordinal);
        var form = page[page.IndexOf("returns/away", StringComparison.Ordinal)..];
        var who = Regex
            .Matches(form[..form.IndexOf("</form>", StringComparison.Ordinal)], "name=\"w1\\.(?<id>[^\"]*)\"")
            .Select(match => match.Groups["id"].Value)
            .ToList();
        var stamp = Regex.Match(form, "name=\"stamp\" value=\"(?<stamp>[^\"]*)\"").Groups["stamp"].Value;
        const string Waited = "/01-one-tin-three-lifts\"(?s:.*?)Not in:(?s:.*?)</ul>";
        Assert.Contains(who[0], Regex.Match(await desk.PageAsync(""), Waited).Value, StringComparison.Ordinal);
        Assert.Equal(303, await desk.StatusAsync(desk.Request(Round + "/returns/away", ("stamp", stamp), ("w1." + who[0], "absent"))));
        Assert.Contains(
            who[0] + ",absent",
            await File.ReadAllTextAsync(Path.Combine(desk.Folder.Root, "terms", "class", "marks.csv")),
            StringComparison.Ordinal
        );
        Assert.Matches($"people/class/{who[0]}(?s:[^<]*)</a></th>\\s*<td>absent", await desk.PageAsync(Round + "/returns"));
        Assert.DoesNotContain(who[0], Regex.Match(await desk.PageAsync(""), Waited).Value, StringComparison.Ordinal);
    }

    /// <summary>
    /// A round that a term counts stays; any other goes with all that is in it, and comes back as it was, with its number kept for it.
    /// </summary>
    private async Task ARoundIsTakenAwayAndPutBack()
    {
        Assert.Contains("Autumn counts this round, so it cannot go yet", await desk.PageAsync(Round + "/aside"), StringComparison.Ordinal);
        using (var refused = await desk.Client.SendAsync(desk.Request(Round + "/aside", [])))
            Assert.Contains("Autumn counts this round", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Dealt.Dealt, "dealt.json")));

        const string Other = "rounds/class/02-thin-air-quick-breads";
        var page = WebUtility.HtmlDecode(await desk.PageAsync(Other + "/aside"));
        Assert.Contains("24 workbooks as handed out", page, StringComparison.Ordinal);
        Assert.Contains("1 file that came back, marked for 1 student", page, StringComparison.Ordinal);
        var before = Directory
            .EnumerateFiles(
                desk.Folder.RoundPlace(desk.Folder.Class("class")!, "02-thin-air-quick-breads"),
                "*",
                SearchOption.AllDirectories
            )
            .Count();
        Assert.Equal(303, await desk.StatusAsync(desk.Request(Other + "/aside", [])));
        Assert.Equal(404, await desk.StatusAsync(desk.Request(Other, null)));
        Assert.Equal(4, desk.Folder.NewRound(desk.Folder.Class("class")!, "next").Number);
        Assert.Contains("1 round taken away", await desk.PageAsync(""), StringComparison.Ordinal);
        Assert.Equal(303, await desk.StatusAsync(desk.Request("rounds/class/back", ("round", "02-thin-air-quick-breads"))));
        Assert.Equal(200, await desk.StatusAsync(desk.Request(Other, null)));
        Assert.Equal(
            before,
            Directory
                .EnumerateFiles(
                    desk.Folder.RoundPlace(desk.Folder.Class("class")!, "02-thin-air-quick-breads"),
                    "*",
                    SearchOption.AllDirectories
                )
                .Count()
        );
        Assert.Contains(
            "No round of that name was taken away",
            await (await desk.Client.SendAsync(desk.Request("rounds/class/back", ("round", "../../term")))).Content.ReadAsStringAsync(),
            StringComparison.Ordinal
        );
    }

    /// <summary>It is told as that, asked about, and settled by one press that can be taken back.</summary>
    private async Task AnEmptyWorkbookIsAskedAbout()
    {
        const string Who = "rosa-whitehorse";
        var returned = Path.Combine(Dealt.Returned, Who + ".xlsx");
        File.Copy(Path.Combine(Dealt.Dealt, "workbooks", Who + ".xlsx"), returned);
        var said = WebUtility.HtmlDecode(await desk.DoneAsync(Round + "/returns/judge"));
        Assert.Contains("A workbook came back empty, from ", said, StringComparison.Ordinal);
        Assert.Matches(
            $"people/class/{Who}\"[^>]*>[^<]*</a></th><td>came back empty",
            Regex.Replace(await desk.PageAsync(Round + "/returns"), @">\s+<", "><")
        );
        Assert.Contains("Workbooks that came back empty", await desk.PageAsync(Round + "/decisions"), StringComparison.Ordinal);

        await desk.DoneAsync(Round + "/decisions/empty", ("student", Who));
        var decided = await desk.PageAsync(Round + "/decisions");
        Assert.DoesNotContain("Workbooks that came back empty", decided, StringComparison.Ordinal);
        var back = Regex.Match(decided, $"name=\"back\" value=\"(?<part>[^\"]*\\.{Who})\"").Groups["part"].Value;
        await desk.DoneAsync(Round + "/decisions/undo", ("back", back));
        Assert.Contains("Workbooks that came back empty", await desk.PageAsync(Round + "/decisions"), StringComparison.Ordinal);
        File.Delete(returned);
        await desk.DoneAsync(Round + "/returns/judge");
    }

    /// <summary>
    /// One file of an archive is somebody's, one of an archive in it goes aside; the other files of both, and the archive as it came, stay.
    /// </summary>
    private async Task WhatLiesInAnArchiveIsDecidedAsWell()
    {
        var waiting = Regex
            .Match(await desk.PageAsync(Round + "/decisions"), "Needs your word <span class=\"small\">(?<count>[0-9]+)</span>")
            .Groups["count"]
            .Value;
        byte[] Zip(params (string Name, byte[] Content)[] files)
        {
            using var bytes = new MemoryStream();
            using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
                foreach (var (name, content) in files)
                {
                    using var entry = zip.CreateEntry(name).Open();
                    entry.Write(content);
                }
            return bytes.ToArray();
        }
        var all = Zip(
            ("week 3/Jansen.docx", "no workbook"u8.ToArray()),
            ("more.zip", Zip(("dsouza: homework.xlsx", "nor this"u8.ToArray()), ("third.txt", "Away"u8.ToArray())))
        );
        await File.WriteAllBytesAsync(Path.Combine(Dealt.Returned, "all.zip"), all);
        await desk.DoneAsync(Round + "/returns/judge");

        await desk.DoneAsync(Round + "/decisions/whose", ("file", "all.zip/week 3/Jansen.docx"), ("student", "rosa-whitehorse"));
        Assert.Equal(all, await File.ReadAllBytesAsync(Path.Combine(Dealt.SetAside, "all.zip")));
        Assert.True(File.Exists(Path.Combine(Dealt.Returned, "rosa-whitehorse Jansen.docx")));
        Assert.DoesNotContain("all.zip", await desk.PageAsync(Round + "/decisions"), StringComparison.Ordinal);
        foreach (var file in new[] { "all/more.zip/dsouza: homework.xlsx", "all/more/third.txt" })
            await desk.DoneAsync(Round + "/decisions/aside", ("file", file));
        Assert.Equal("nor this", await File.ReadAllTextAsync(Path.Combine(Dealt.SetAside, "all", "more", "dsouza_ homework.xlsx")));
        Assert.Contains(
            $"Needs your word <span class=\"small\">{waiting}</span>",
            await desk.PageAsync(Round + "/decisions"),
            StringComparison.Ordinal
        );
        using var gone = await desk.Client.SendAsync(desk.Request(Round + "/decisions/aside", ("file", "all.zip/week 3/Jansen.docx")));
        Assert.Contains("There is no such file", await gone.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Directory.Delete(Dealt.SetAside, recursive: true);
    }

    /// <summary>A workbook of the other round goes there, a note goes aside, and nothing of either waits any more.</summary>
    private async Task WhatCountsForNobodyGoesWhereItBelongs()
    {
        await desk.DoneAsync("rounds/class/try", ("lesson", "thin-air-quick-breads"), ("seed", "7"));
        await desk.DoneAsync("rounds/class/deal");
        var other = desk.Folder.Round(desk.Folder.Class("class")!, "02-thin-air-quick-breads")!;
        File.Copy(Path.Combine(other.Dealt, "workbooks", "hana-sato.xlsx"), Path.Combine(Dealt.Returned, "mine.xlsx"));
        await File.WriteAllTextAsync(Path.Combine(Dealt.Returned, "notes.txt"), "Away on Friday");
        await desk.DoneAsync(Round + "/returns/judge");
        Assert.Contains(
            "Put it where it belongs: Thin Air",
            WebUtility.HtmlDecode(await desk.PageAsync(Round + "/decisions")),
            StringComparison.Ordinal
        );

        await desk.DoneAsync(Round + "/decisions/elsewhere", ("file", "mine.xlsx"));
        await desk.DoneAsync(Round + "/decisions/aside", ("file", "notes.txt"));
        Assert.Equal(["mine.xlsx"], Directory.EnumerateFiles(other.Returned).Select(Path.GetFileName));
        Assert.Equal(["notes.txt"], Directory.EnumerateFiles(Dealt.SetAside).Select(Path.GetFileName));
        Assert.DoesNotContain("Files that count for nobody", await desk.PageAsync(Round + "/decisions"), StringComparison.Ordinal);
        Assert.Matches(
            "Hana Satō</a></th><td>came back empty",
            Regex.Replace(WebUtility.HtmlDecode(await desk.PageAsync("rounds/class/02-thin-air-quick-breads/returns")), @">\s+<", "><")
        );
        Assert.Contains("hana.sato@example.org", await desk.PageAsync("rounds/class/02-thin-air-quick-breads"), StringComparison.Ordinal);
        Assert.Equal(200, await desk.StatusAsync(desk.Request("people/class/hana-sato/skills", null)));
    }

    private async Task WhatStudentsGetIsTheirWorkbooksAlone()
    {
        using var answer = await desk.Client.SendAsync(desk.Request(Round + "/zip/workbooks", null));
        await using var zip = new ZipArchive(await answer.Content.ReadAsStreamAsync());
        Assert.Equal(
            Directory.EnumerateFiles(Path.Combine(Dealt.Dealt, "workbooks")).Select(Path.GetFileName).Order(StringComparer.Ordinal),
            zip.Entries.Select(entry => entry.FullName).Order(StringComparer.Ordinal)
        );
        Assert.Equal(24, zip.Entries.Count);
    }

    private Round Dealt => desk.Folder.Round(desk.Folder.Class("class")!, "01-one-tin-three-lifts")!;
}
