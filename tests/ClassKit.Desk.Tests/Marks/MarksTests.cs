using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Desk.Marks;
using ClassKit.Desk.Tests.Tools;
using ClassKit.Desk.Texts;
using ClassKit.Pages.Rendering;
using ClassKit.Terms.Bench;
using ClassKit.Terms.Grades;
using ClassKit.UseCases.BenchMarks;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Terms;

namespace ClassKit.Desk.Tests.Marks;

/// <summary>
/// Marks of the invented class's term, typed and brought back: each goes into its own cell of a plain file, or nowhere; what is shown is
/// what the use cases make of those files.
/// </summary>
public sealed partial class MarksTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Term = "marks/class/term.term";

    [Fact]
    public async Task A_typed_mark_changes_its_own_cell()
    {
        using var table = new Kept(In("term", "marks.csv"));
        Assert.Equal(303, await desk.StatusAsync(await Form(Work("How steam lifts"), "/typed", ("m1.rosa-whitehorse", "13,5 late"))));
        var (before, after) = (table.Lines, await File.ReadAllLinesAsync(table.Path));
        Assert.Equal(
            before.Where(line => !line.StartsWith("rosa-whitehorse,", StringComparison.Ordinal)),
            after.Where(line => !line.StartsWith("rosa-whitehorse,", StringComparison.Ordinal))
        );
        var column = before[0].Split(',').IndexOf("How steam lifts");
        Assert.Equal("13.5 late", after.Single(line => line.StartsWith("rosa-whitehorse,", StringComparison.Ordinal)).Split(',')[column]);
        Assert.Equal(
            13.5m,
            TermReader
                .Read(Library.OfPaths().At(In("term", "term.md")))
                .Model!.Works.First(work => work.Title == "How steam lifts")
                .Typed.First(mark => mark.Student == "rosa-whitehorse")
                .Mark.Points
        );
    }

    [Theory]
    [InlineData("Percentages", "m1.amara-osei", "25", "Amara Osei: “Percentages” has the mark 25, and it is out of 24")]
    [InlineData("Percentages", "m1.amara-osei", "abesnt", "Did you mean “absent”?")]
    public async Task A_mark_that_cannot_be_is_said_and_not_written(string work, string field, string typed, string said)
    {
        using var table = new Kept(In("term", "marks.csv"));
        using var answer = await desk.Client.SendAsync(await Form(Work(work), "/typed", (field, typed)));
        var page = System.Net.WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains(said, page, StringComparison.Ordinal);
        if (work == "Percentages")
            Assert.Contains($"value=\"{typed}\"", page, StringComparison.Ordinal);
        Assert.Equal(table.Bytes, await File.ReadAllBytesAsync(table.Path));
    }

    /// <summary>The rule of the invented term, `rubrics/term-grade.md`: what is typed goes into its cells, and nothing else of the file moves.</summary>
    [Fact]
    public async Task The_rule_is_changed_in_a_form_and_everything_else_of_its_file_stays()
    {
        using var rule = new Kept(In("rubrics", "term-grade.md"));
        var before = await File.ReadAllTextAsync(rule.Path);
        Assert.Equal(303, await desk.StatusAsync(await Form(Term + "/rule", "")));
        Assert.Equal(before, await File.ReadAllTextAsync(rule.Path));

        using (var refused = await desk.Client.SendAsync(await Form(Term + "/rule", "", ("weight.0", "50"))))
            Assert.Contains("The weights come to 110 %", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllTextAsync(rule.Path));

        var typed = await Form(
            Term + "/rule",
            "",
            ("weight.0", "35"),
            ("weight.2", "25 %"),
            ("drop.0", "2"),
            ("least.1", "62,5"),
            ("from.2", "80"),
            ("late", "5"),
            ("absent", "left out"),
            ("resit-most", "")
        );
        Assert.Equal(303, await desk.StatusAsync(typed));
        Assert.Equal(
            before
                .Replace("| Calculations | 40 % | 1 | alike |", "| Calculations | 35 % | 2 | alike |", StringComparison.Ordinal)
                .Replace("| Written work | 20 %", "| Written work | 25 %", StringComparison.Ordinal)
                .Replace("clean work | 60 %", "clean work | 62.5 %", StringComparison.Ordinal)
                .Replace("| Good | 75 %", "| Good | 80 %", StringComparison.Ordinal)
                .Replace("late: 10 %", "late: 5 %", StringComparison.Ordinal)
                .Replace("absent: zero\n", "absent: left out\n", StringComparison.Ordinal)
                .Replace("resit: better, at most 70 %", "resit: better", StringComparison.Ordinal),
            await File.ReadAllTextAsync(rule.Path)
        );

        // An older page writes nothing over it.
        using var late = await desk.Client.SendAsync(desk.Request(Term + "/rule", ("stamp", "old"), ("late", "20")));
        Assert.Contains(
            "You had typed: 20 where 5 stands now",
            System.Net.WebUtility.HtmlDecode(await late.Content.ReadAsStringAsync()),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_rule_that_the_grades_follow_is_led_to() =>
        Assert.Contains(
            $"href=\"texts/{desk.Folder.TextAt(In("rubrics", "term-grade.md"))!.Key}\"",
            await desk.PageAsync(Term),
            StringComparison.Ordinal
        );

    /// <summary>Two tabs, or a tab and another program: what the older one shows is only how things were, and what was typed into it is kept.</summary>
    [Fact]
    public async Task A_page_that_was_opened_before_writes_nothing_over_and_loses_nothing()
    {
        using var term = new Kept(In("term", "term.md"));
        using var table = new Kept(In("term", "marks.csv"));
        var page = Work("Bench day one");
        var older = await Form(page, "/bench/first", ("b1.amara-osei", "Excellent"), ("b0.bao-nguyen", "calm"));
        Assert.Equal(303, await desk.StatusAsync(await Form(page, "/bench/first", ("b1.anders-lindqvist", "Not yet"))));
        var kept = await Levels();

        using var answer = await desk.Client.SendAsync(older);
        var shown = System.Net.WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());

        Assert.Matches("with what you had typed in its place: Amara Osei, [^:;]*: Excellent; Bảo Nguyễn, in your words: calm\\.", shown);
        Assert.Equal(kept, await Levels());
        Assert.Contains("value=\"calm\"", shown, StringComparison.Ordinal);
        var anders = shown[shown.IndexOf("name=\"b1.anders-lindqvist\"", StringComparison.Ordinal)..];
        Assert.Matches("^[^>]*>(.|\n)*?<option[^>]*selected[^>]*>Not yet", anders[..anders.IndexOf("</select>", StringComparison.Ordinal)]);

        async Task<string> Levels() =>
            string.Concat(
                await Task.WhenAll(
                    Directory.EnumerateFiles(In("term"), "bench-day-one*.csv").Order().Select(file => File.ReadAllTextAsync(file))
                )
            );
    }

    [Fact]
    public async Task A_table_that_was_changed_meanwhile_is_not_written_over()
    {
        using var table = new Kept(In("term", "marks.csv"));
        var form = await Form(Work("Percentages"), "/typed", ("m1.amara-osei", "1"));
        await File.AppendAllTextAsync(table.Path, "\n");
        using var answer = await desk.Client.SendAsync(form);
        var page = System.Net.WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains("changed meanwhile", page, StringComparison.Ordinal);
        Assert.Contains("what you had typed in its place: Amara Osei: 1.", page, StringComparison.Ordinal);
        Assert.Contains("name=\"m1.amara-osei\" value=\"1\"", page, StringComparison.Ordinal);
        Assert.Equal(table.Bytes.Length + 1, (await File.ReadAllBytesAsync(table.Path)).Length);
    }

    [Fact]
    public async Task A_level_typed_at_the_desk_stands_in_the_markers_table_and_a_gap_is_asked_about_by_name()
    {
        using var table = new Kept(In("term", "bench-day-one.csv"));
        Assert.Equal(
            303,
            await desk.StatusAsync(
                await Form(
                    Work("Bench day one") + "?as=first",
                    "/bench/first",
                    ("b8.amara-osei", "Excellent"),
                    ("b0.amara-osei", "Told, \"well\"; shown")
                )
            )
        );
        var line = (await File.ReadAllLinesAsync(table.Path)).Single(one => one.StartsWith("amara-osei,", StringComparison.Ordinal));
        Assert.Equal(
            "amara-osei,Developing,Developing,Secure,Developing,Not yet,Secure,Secure,Excellent,\"Told, \"\"well\"\"; shown\"",
            line
        );

        // One criterion still to come: everybody else's marks and the other seven levels of hers stay.
        Assert.Equal(
            303,
            await desk.StatusAsync(
                await Form(Work("Bench day one") + "?as=first", "/bench/first", ("b2.amara-osei", ""), ("b8.anders-lindqvist", "Excellent"))
            )
        );
        var page = await desk.PageAsync(Work("Bench day one") + "?as=first&kept=yes");
        Assert.Contains("<li>Amara Osei: Weighing</li>", page, StringComparison.Ordinal);
        Assert.Contains("What is complete counts", page, StringComparison.Ordinal);
        line = (await File.ReadAllLinesAsync(table.Path)).Single(one => one.StartsWith("amara-osei,", StringComparison.Ordinal));
        Assert.StartsWith("amara-osei,Developing,,Secure,", line, StringComparison.Ordinal);
        var day = TermReader
            .Read(Library.OfPaths().At(In("term", "term.md")))
            .Model!.Works.First(work => work.Title == "Bench day one")
            .Bench[0]
            .First;
        Assert.DoesNotContain("amara-osei", day.Places.Keys);
        Assert.Equal(3, day.Places["anders-lindqvist"][7]);
        Assert.Contains(
            "Bench day one is not marked in every criterion for Amara Osei",
            string.Join('\n', Said(WeighTerm.Write(WeighTerm.Run(WeighTerm.Read(In("term", "term.md")).Model!, Run.Unwatched)))),
            StringComparison.Ordinal
        );

        // What was kept is in the form again, so that nothing of it is lost when the rest follows.
        Assert.Equal(
            303,
            await desk.StatusAsync(await Form(Work("Bench day one") + "?as=first", "/bench/first", ("b2.amara-osei", "Secure")))
        );
        Assert.DoesNotContain("Not complete yet", await desk.PageAsync(Work("Bench day one") + "?as=first"), StringComparison.Ordinal);
    }

    /// <summary>Levels chosen for many go to whoever has none, but for those of whom a word stands in place of a mark.</summary>
    [Fact]
    public async Task A_level_for_a_whole_team_or_for_everybody_goes_to_who_has_none()
    {
        using var term = new Kept(In("term", "term.md"));
        using var marks = new Kept(In("term", "marks.csv"));
        var work = Work("Bench day two");
        var form = MakeBenchForm.Run(
            MakeBenchForm.Read(In("rubrics", "bench-work.md"), In("class.md"), In("roster.csv")).Model!,
            Run.Unwatched
        );
        var away = form.Students[1].Id;
        Assert.Equal(303, await desk.StatusAsync(await Form(work + "?as=resit", "/bench/resit", ($"w2.{away}", "excused"))));
        Assert.Contains(",excused", await File.ReadAllTextAsync(marks.Path), StringComparison.Ordinal);
        (string, string)[] many =
        [
            .. Enumerable.Range(1, 8).Select(at => ($"b{at}.(all)", "Secure")),
            ("b1.(team 1)", "Excellent"),
            ($"b2.{form.Students[0].Id}", "Not yet"),
        ];
        Assert.Equal(303, await desk.StatusAsync(await Form(work + "?as=resit", "/bench/resit", many)));
        var lines = await File.ReadAllLinesAsync(In("term", "bench-day-two-resit.csv"));
        File.Delete(In("term", "bench-day-two-resit.csv"));
        Assert.Equal($"{form.Students[0].Id},Excellent,Not yet,Secure,Secure,Secure,Secure,Secure,Secure,", lines[1]);
        Assert.DoesNotContain(lines, line => line.StartsWith(away + ",", StringComparison.Ordinal));
        Assert.Equal(form.Students.Count - 1, lines.Length - 1);
        Assert.Equal($"{form.Students[^1].Id},Secure,Secure,Secure,Secure,Secure,Secure,Secure,Secure,", lines[^1]);
    }

    /// <summary>
    /// Levels stand above and words below, and one button keeps both; a level beside “absent” is asked about, and neither is written.
    /// </summary>
    [Fact]
    public async Task A_level_and_a_word_typed_on_one_page_are_kept_together()
    {
        using var marks = new Kept(In("term", "marks.csv"));
        using var table = new Kept(In("term", "bench-day-one.csv"));
        var page = Work("Bench day one");
        Assert.Single(Regex.Matches(await desk.PageAsync(page), "<button class=\"go\" type=\"submit\">Keep"));

        using var refused = await desk.Client.SendAsync(
            await Form(page + "?as=first", "/bench/first", ("b8.amara-osei", "Excellent"), ("w1.amara-osei", "absent"))
        );
        Assert.Contains(
            "Amara Osei has levels, and “absent” is chosen as well",
            System.Net.WebUtility.HtmlDecode(await refused.Content.ReadAsStringAsync()),
            StringComparison.Ordinal
        );
        Assert.Equal(table.Bytes, await File.ReadAllBytesAsync(table.Path));
        Assert.Equal(marks.Bytes, await File.ReadAllBytesAsync(marks.Path));

        Assert.Equal(
            303,
            await desk.StatusAsync(
                await Form(
                    page + "?as=first",
                    "/bench/first",
                    ("b8.amara-osei", "Excellent"),
                    ("w1.bao-nguyen", "excused"),
                    ("which", "excuse")
                )
            )
        );
        Assert.Contains(
            ",Excellent",
            (await File.ReadAllLinesAsync(table.Path)).Single(one => one.StartsWith("amara-osei,", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "excused",
            (await File.ReadAllLinesAsync(marks.Path)).Single(one => one.StartsWith("bao-nguyen,", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
    }

    /// <summary>Levels beside “excused” count nowhere: which of the two is meant only the instructor knows, and is asked by name.</summary>
    [Fact]
    public async Task Levels_and_an_excuse_of_one_student_are_asked_about_and_never_kept_unasked()
    {
        using var marks = new Kept(In("term", "marks.csv"));
        using var table = new Kept(In("term", "bench-day-one.csv"));
        var page = Work("Bench day one") + "?as=first";
        (string, string)[] both = [("b8.amara-osei", "Excellent"), ("w1.amara-osei", "excused")];
        using (var refused = await desk.Client.SendAsync(await Form(page, "/bench/first", both)))
        {
            var said = System.Net.WebUtility.HtmlDecode(await refused.Content.ReadAsStringAsync());
            Assert.Contains("Amara Osei has levels and is excused as well", said, StringComparison.Ordinal);
            Assert.Contains("name=\"which\" value=\"levels\" form=\"bench-levels\"", said, StringComparison.Ordinal);
            Assert.Matches("name=\"w1.amara-osei\"[^>]*>(?:(?!</select>)[\\s\\S])*<option selected[^>]*>excused<", said);
        }
        Assert.Equal(table.Bytes, await File.ReadAllBytesAsync(table.Path));
        Assert.Equal(marks.Bytes, await File.ReadAllBytesAsync(marks.Path));

        // The levels: the word goes.
        Assert.Equal(303, await desk.StatusAsync(await Form(page, "/bench/first", [.. both, ("which", "levels")])));
        Assert.Contains(",Excellent", LineOf(table.Path), StringComparison.Ordinal);
        Assert.DoesNotContain("excused", LineOf(marks.Path), StringComparison.Ordinal);

        // The excuse: the levels stay in their file, and the work's page and the term say that they count nowhere.
        Assert.Equal(303, await desk.StatusAsync(await Form(page, "/bench/first", [.. both, ("which", "excuse")])));
        Assert.Contains(",Excellent", LineOf(table.Path), StringComparison.Ordinal);
        Assert.Contains("excused", LineOf(marks.Path), StringComparison.Ordinal);
        Assert.Contains(
            "Amara Osei has levels here and is excused: the excuse counts",
            System.Net.WebUtility.HtmlDecode(await desk.PageAsync(page)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Bench day one: Amara Osei has a mark and is excused as well",
            System.Net.WebUtility.HtmlDecode(await desk.PageAsync(Term)),
            StringComparison.Ordinal
        );
        // Whoever was asked is not asked again.
        Assert.Equal(303, await desk.StatusAsync(await Form(page, "/bench/first", ("b1.bao-nguyen", "Excellent"))));

        static string LineOf(string path) => File.ReadAllLines(path).Single(one => one.StartsWith("amara-osei,", StringComparison.Ordinal));
    }

    /// <summary>A rubric that ships, and a table whose name is in quotes.</summary>
    [Fact]
    public async Task Marks_can_be_typed_wherever_rubric_and_table_lie()
    {
        using var term = new Kept(In("term", "term.md"));
        using var table = new Kept(In("term", "bench-day-one.csv"));
        using var marks = new Kept(In("term", "marks.csv"));
        await File.WriteAllTextAsync(
            term.Path,
            string.Join('\n', term.Lines)
                .Replace("../rubrics/bench-work.md", "shipped:/rubrics/bench-work.md", StringComparison.Ordinal)
                .Replace("marks: marks.csv", "marks: \"marks.csv\"", StringComparison.Ordinal)
        );

        Assert.Equal(
            303,
            await desk.StatusAsync(await Form(Work("Bench day one") + "?as=first", "/bench/first", ("b8.amara-osei", "Excellent")))
        );
        Assert.Equal(303, await desk.StatusAsync(await Form(Work("How steam lifts"), "/typed", ("m1.rosa-whitehorse", "13.5"))));

        Assert.Contains(
            ",Excellent,",
            (await File.ReadAllLinesAsync(table.Path)).Single(one => one.StartsWith("amara-osei,", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "13.5",
            (await File.ReadAllLinesAsync(marks.Path)).Single(one => one.StartsWith("rosa-whitehorse,", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
    }

    /// <summary>The words are those that the table's own reader knows.</summary>
    [Theory]
    [InlineData("13.5", "late", "13.5 late")]
    [InlineData("13.5 late", "late", "13.5 late")]
    [InlineData("", "absent", "absent")]
    [InlineData("12", "", "12")]
    [InlineData("12", "absent", "12 absent")]
    public void Points_and_a_word_make_one_cell(string points, string word, string cell) =>
        Assert.Equal(cell, new TypedCell(points, word).Text);

    /// <summary>A work that a mistake put there goes again, and the marks that were typed for it stay readable beside the term.</summary>
    [Fact]
    public async Task A_work_is_taken_out_of_the_term_and_its_marks_are_kept()
    {
        using var term = new Kept(In("term", "term.md"));
        using var table = new Kept(In("term", "marks.csv"));
        var page = Work("How steam lifts");
        using (var other = await desk.Client.SendAsync(await Form(page, "/out", ("work", "Percentages"))))
            Assert.Contains("showed another work", await other.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(term.Bytes, await File.ReadAllBytesAsync(term.Path));

        Assert.Equal(303, await desk.StatusAsync(await Form(page, "/out", ("work", "How steam lifts"))));

        var left = TermReader.Read(Library.OfPaths().At(In("term", "term.md"))).Model!;
        Assert.DoesNotContain("How steam lifts", left.Works.Select(work => work.Title));
        Assert.Contains("Percentages", left.Works.Select(work => work.Title));
        Assert.DoesNotContain("How steam lifts", (await File.ReadAllLinesAsync(table.Path))[0], StringComparison.Ordinal);
        var kept = Directory.EnumerateFiles(In("term"), "marks before *.csv").Single();
        Assert.Equal(table.Bytes, await File.ReadAllBytesAsync(kept));
        File.Delete(kept);
    }

    /// <summary>A rule of a running term is refused as a text too, where its shares come to more than a whole.</summary>
    [Fact]
    public async Task A_rule_that_would_make_no_grades_is_not_kept_as_a_text()
    {
        using var rule = new Kept(In("rubrics", "term-grade.md"));
        var before = await File.ReadAllTextAsync(rule.Path);
        var page = $"texts/{desk.Folder.TextAt(rule.Path)!.Key}";
        using var refused = await desk.Client.SendAsync(
            desk.Request(
                page,
                ("stamp", OwnText.Read(rule.Path)!.Stamp),
                ("text", before.Replace("| Calculations | 40 %", "| Calculations | 50 %", StringComparison.Ordinal)),
                ("keep", "yes")
            )
        );
        var said = await refused.Content.ReadAsStringAsync();
        Assert.Contains("Nothing was written", said, StringComparison.Ordinal);
        Assert.Contains("The weights come to 110 %", said, StringComparison.Ordinal);
        Assert.Equal(rule.Bytes, await File.ReadAllBytesAsync(rule.Path));
    }

    /// <summary>By hand: 20 of 100 parts count for the one, 80 for the other; only the first stands on less than half.</summary>
    [Fact]
    public void A_grade_that_stands_on_little_is_named_before_it_is_given_out()
    {
        var weighed = WeighTerm.Run(WeighTerm.Read(In("term", "term.md")).Model!, Run.Unwatched).Grades[0];
        var thin = weighed with
        {
            Categories =
            [
                .. weighed.Categories.Select(category => category.Category.Weight == 0.2m ? category : category with { Share = null }),
            ],
        };
        var sound = weighed with
        {
            Categories =
            [
                .. weighed.Categories.Select(category => category.Category.Weight == 0.2m ? category with { Share = null } : category),
            ],
        };
        Assert.Equal((0.2m, 0.8m), (thin.StandsOn, sound.StandsOn));
        var page = PageRenderer.Render<ThinGrades>((nameof(ThinGrades.Grades), (IReadOnlyList<TermGrade>)[thin, sound]));
        Assert.Contains("1 grade stands on less than half", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_absent_comes_to_is_said_where_it_is_chosen() =>
        Assert.Contains(
            "It counts as nothing earned, 0 %, as the rule of this term has it.",
            System.Net.WebUtility.HtmlDecode(await desk.PageAsync(Work("Percentages"))),
            StringComparison.Ordinal
        );

    /// <summary>The file is put together as the page's script does: a text, and that text's SHA-256 (FIPS 180-4) in hexadecimal.</summary>
    [Fact]
    public async Task What_the_kitchens_page_saved_is_taken_in_once_as_it_is_and_compared_with_the_other_marker()
    {
        using var term = new Kept(In("term", "term.md"));
        var form = MakeBenchForm.Run(
            MakeBenchForm.Read(In("rubrics", "bench-work.md"), In("class.md"), In("roster.csv")).Model!,
            Run.Unwatched
        );
        var fields = Enumerable
            .Range(1, form.Teams)
            .SelectMany(team =>
                form.Scale.Criteria.Select(
                    (_, at) => KeyValuePair.Create(BenchForm.OfTeam(team, at), form.Scale.LevelNames[(team + at) % 4])
                )
            )
            .ToDictionary();
        var content = JsonSerializer.Serialize(
            new
            {
                identity = form.Identity,
                form = "x",
                fields,
            }
        );
        var file = JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                kind = "classkit-form",
                version = 1,
                digest = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content))),
                content,
            }
        );

        var work = Work("Bench day two");
        Assert.Contains(
            "digest does not fit",
            await Brought(
                work + "/back/second",
                "marks.json",
                Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(file).Replace("Secure", "Excellent", StringComparison.Ordinal))
            ),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "nor a workbook",
            await Brought(work + "/back/second", "../../marks.exe", file),
            StringComparison.OrdinalIgnoreCase
        );
        Assert.Equal(term.Bytes, await File.ReadAllBytesAsync(term.Path));

        Assert.Equal("", await Brought(work + "/back/second", "marks.json", file));
        Assert.Equal(file, await File.ReadAllBytesAsync(In("term", "bench-day-two-second.json")));
        var page = await desk.PageAsync(work + "/agreement");
        Assert.Equal(
            CompareMarkers
                .Write(
                    CompareMarkers.Run(
                        CompareMarkers
                            .Read(
                                In("rubrics", "bench-work.md"),
                                In("class.md"),
                                In("roster.csv"),
                                In("term", "bench-day-two.csv"),
                                In("term", "bench-day-two-second.json")
                            )
                            .Model!,
                        Run.Unwatched
                    )
                )
                .Files[0]
                .Content,
            Encoding.UTF8.GetBytes(page)
        );
        File.Delete(In("term", "bench-day-two-second.json"));
    }

    /// <summary>One student's line comes back, and everybody else was typed: nobody loses a mark, and nothing is replaced unseen.</summary>
    [Fact]
    public async Task What_is_brought_back_is_put_together_with_what_stands_there_and_can_be_taken_back()
    {
        using var term = new Kept(In("term", "term.md"));
        var typed = In("term", "bench-day-two.csv");
        var before = await File.ReadAllLinesAsync(typed);
        var cells = before[1].Split(',');
        var other = cells[1] == "Excellent" ? "Secure" : "Excellent";
        var file = Encoding.UTF8.GetBytes($"{before[0]}\n{string.Join(',', cells.Select((cell, at) => at == 1 ? other : cell))}\n");
        var work = Work("Bench day two");

        var asked = await Brought(work + "/back/first", "marks.csv", file);
        Assert.Contains($"<td>{cells[1]}</td><td>{other}</td>", asked, StringComparison.Ordinal);
        Assert.Equal(term.Bytes, await File.ReadAllBytesAsync(term.Path));
        Assert.Equal(before, await File.ReadAllLinesAsync(typed));

        Assert.Equal(303, await desk.StatusAsync(desk.Request(work + "/take/first", ("which", "brought"))));
        var merged = await File.ReadAllLinesAsync(In("term", "bench-day-two-first.csv"));
        Assert.Equal(other, merged[1].Split(',')[1]);
        Assert.Equal(
            before.Skip(2).Where(line => line.Split(',')[1].Length > 0).Select(line => line.Split(',')[..9]),
            merged.Skip(2).Select(line => line.Split(',')[..9])
        );
        Assert.Equal(before, await File.ReadAllLinesAsync(typed));

        // The same again takes nothing away, and what stood there before can count again.
        Assert.Equal("", await Brought(work + "/back/first", "marks.csv", file));
        Assert.Contains("Let bench-day-two-first.csv count", await desk.PageAsync(work + "?as=first"), StringComparison.Ordinal);
        Assert.Equal(303, await desk.StatusAsync(desk.Request(work + "/earlier/first", ("earlier", "bench-day-two.csv"))));
        Assert.DoesNotContain("bench-day-two-first", await File.ReadAllTextAsync(term.Path), StringComparison.Ordinal);
        foreach (var made in Directory.EnumerateFiles(In("term"), "bench-day-two-first*"))
            File.Delete(made);
    }

    /// <summary>A form that was open before others' marks came back, and words of somebody without any level.</summary>
    [Fact]
    public async Task A_form_that_shows_no_longer_what_counts_is_not_written_over_it()
    {
        using var term = new Kept(In("term", "term.md"));
        var work = Work("Bench day two");
        var shown = await Form(work + "?as=resit", "/bench/resit", ("b1.amara-osei", "Secure"), ("b0.amara-osei", "neat"));
        var form = MakeBenchForm.Run(
            MakeBenchForm.Read(In("rubrics", "bench-work.md"), In("class.md"), In("roster.csv")).Model!,
            Run.Unwatched
        );
        var names = form.Scale.Criteria.Select(criterion =>
            criterion.Name.Contains(',', StringComparison.Ordinal) ? $"\"{criterion.Name}\"" : criterion.Name
        );
        var table =
            $"student,{string.Join(',', names)},comment\nbao-nguyen{string.Concat(form.Scale.Criteria.Select(_ => ",Excellent"))},\namara-osei{new string(',', form.Scale.Criteria.Count)},burnt hand\n";
        Assert.Equal("", await Brought(work + "/back/resit", "marks.csv", Encoding.UTF8.GetBytes(table)));
        var stands = await File.ReadAllTextAsync(In("term", "bench-day-two-resit.csv"));
        Assert.Contains("burnt hand", await desk.PageAsync(work + "?as=resit"), StringComparison.Ordinal);

        using var answer = await desk.Client.SendAsync(shown);
        var page = System.Net.WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains("changed meanwhile", page, StringComparison.Ordinal);
        Assert.Contains($"Amara Osei, {form.Scale.Criteria[0].Name}: Secure", page, StringComparison.Ordinal);
        Assert.Equal(stands, await File.ReadAllTextAsync(In("term", "bench-day-two-resit.csv")));

        // What is typed into the form as it is now is kept beside what came back.
        Assert.Equal(303, await desk.StatusAsync(await Form(work + "?as=resit", "/bench/resit", ("b1.amara-osei", "Secure"))));
        var lines = await File.ReadAllLinesAsync(In("term", "bench-day-two-resit.csv"));
        File.Delete(In("term", "bench-day-two-resit.csv"));
        Assert.Contains(lines, line => line.StartsWith("bao-nguyen,Excellent,Excellent", StringComparison.Ordinal));
        Assert.Contains(lines, line =>
            line.StartsWith("amara-osei,Secure,", StringComparison.Ordinal) && line.EndsWith("burnt hand", StringComparison.Ordinal)
        );
    }

    /// <summary>Two files brought back in two windows: the page that shows the first never lets the second count.</summary>
    [Fact]
    public async Task What_is_taken_in_is_what_the_page_shows()
    {
        using var term = new Kept(In("term", "term.md"));
        var before = await File.ReadAllLinesAsync(In("term", "bench-day-two.csv"));
        byte[] With(string level) =>
            Encoding.UTF8.GetBytes($"{before[0]}\n{string.Join(',', before[1].Split(',').Select((cell, at) => at == 1 ? level : cell))}\n");
        var others = new[] { "Excellent", "Secure", "Developing" }.Where(level => level != before[1].Split(',')[1]).ToList();
        var work = Work("Bench day two");
        string DraftIn(string page) => Regex.Match(page, "name=\"draft\" value=\"(?<key>[^\"]*)\"").Groups["key"].Value;

        var first = DraftIn(await Brought(work + "/back/first", "marks.csv", With(others[0])));
        var second = DraftIn(await Brought(work + "/back/first", "marks.csv", With(others[1])));
        Assert.NotEqual(first, second);
        using var refused = await desk.Client.SendAsync(desk.Request(work + "/take/first", ("which", "brought"), ("draft", first)));
        Assert.Contains("in another window", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(term.Bytes, await File.ReadAllBytesAsync(term.Path));

        Assert.Equal(303, await desk.StatusAsync(desk.Request(work + "/take/first", ("which", "brought"), ("draft", second))));
        Assert.Equal(others[1], (await File.ReadAllLinesAsync(In("term", "bench-day-two-first.csv")))[1].Split(',')[1]);
        foreach (var made in Directory.EnumerateFiles(In("term"), "bench-day-two-first*"))
            File.Delete(made);
    }

    /// <summary>The class was renamed while its marks were in the kitchen, and team 1 has a criterion to come.</summary>
    [Fact]
    public async Task What_the_kitchens_page_saved_before_a_class_was_renamed_is_taken_in_and_a_team_that_is_not_complete_is_asked_about()
    {
        using var term = new Kept(In("term", "term.md"));
        using var profile = new Kept(In("class.md"));
        var form = MakeBenchForm.Run(
            MakeBenchForm.Read(In("rubrics", "bench-work.md"), In("class.md"), In("roster.csv")).Model!,
            Run.Unwatched
        );
        var fields = Enumerable
            .Range(1, form.Teams)
            .SelectMany(team => Enumerable.Range(0, 8).Select(at => KeyValuePair.Create(BenchForm.OfTeam(team, at), "Secure")))
            .ToDictionary();
        fields.Remove(BenchForm.OfTeam(1, 3));
        var content = JsonSerializer.Serialize(
            new
            {
                identity = form.Identity,
                form = $"{form.Rubric} · {form.Cohort}",
                fields,
            }
        );
        var file = JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                kind = "classkit-form",
                version = 1,
                digest = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content))),
                content,
            }
        );
        await File.WriteAllTextAsync(
            profile.Path,
            (await File.ReadAllTextAsync(profile.Path)).Replace($"# {form.Cohort}", "# Another name", StringComparison.Ordinal)
        );

        Assert.Equal("", await Brought(Work("Bench day two") + "/back/resit", "marks.json", file));
        var page = System.Net.WebUtility.HtmlDecode(await desk.PageAsync(Work("Bench day two") + "?as=resit"));
        File.Delete(In("term", "bench-day-two-resit.json"));
        Assert.Contains($"<li>{form.Students[0].Shown}: {form.Scale.Criteria[3].Name}</li>", page, StringComparison.Ordinal);
        Assert.Contains(
            $"Resit {form.Students.Count - form.Students.Index().Count(one => form.TeamOf(one.Index) == 1)} of {form.Students.Count}",
            page,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_report_and_the_working_are_those_of_the_command()
    {
        var weighed = WeighTerm.Write(WeighTerm.Run(WeighTerm.Read(In("term", "term.md")).Model!, Run.Unwatched));
        foreach (var file in new[] { "term-report.html", "students/bao-nguyen.html" })
            Assert.Equal(
                Encoding.UTF8.GetString(weighed.Files.First(one => one.Path == file).Content),
                await desk.PageAsync($"{Term}/sheets/{file}")
            );
    }

    [Fact]
    public async Task A_term_begun_at_the_desk_holds_and_takes_another_work()
    {
        var folder = desk.Folder.Root;
        using var begun = await desk.Client.SendAsync(
            desk.Request("marks/class/new", ("title", "Spring | <b>term</b>"), ("bench", "yes"), ("written", "yes"))
        );
        Assert.Equal(303, (int)begun.StatusCode);
        var file = Assert.Single(Directory.EnumerateFiles(Path.Combine(folder, "terms", "class"), "*.md"));
        try
        {
            var key = desk.Folder.Keyed(ContentKind.Term).Single(term => term.Path == file).Key;
            Assert.Equal(
                ["Bench work 1", "Written questions"],
                TermReader.Read(Library.OfPaths().At(file)).Model!.Works.Select(work => work.Title)
            );
            var before = await File.ReadAllTextAsync(file);
            Assert.Equal(
                303,
                await desk.StatusAsync(
                    desk.Request(
                        $"marks/class/{key}/works",
                        ("work", "Quiz"),
                        ("kind", "typed marks"),
                        ("category", "Calculations"),
                        ("out-of", "12.5")
                    )
                )
            );
            Assert.Equal(before + "| Quiz | typed marks | Calculations | 12.5 | | | |\n", await File.ReadAllTextAsync(file));
            using var refused = await desk.Client.SendAsync(
                desk.Request(
                    $"marks/class/{key}/works",
                    ("work", "quiz"),
                    ("kind", "typed marks"),
                    ("category", "Calculations"),
                    ("out-of", "1")
                )
            );
            Assert.Contains("a second time", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
            Assert.DoesNotContain("<b>term", await desk.PageAsync($"marks/class/{key}"), StringComparison.Ordinal);

            // What is typed into one term stands in no table of another.
            Assert.Equal(303, await desk.StatusAsync(desk.Request("marks/class/new", ("title", "Summer"), ("written", "yes"))));
            var summer = Path.Combine(folder, "terms", "class", "summer.md");
            Assert.Contains("marks: marks.csv\n", before, StringComparison.Ordinal);
            Assert.Contains("marks: marks-2.csv\n", await File.ReadAllTextAsync(summer), StringComparison.Ordinal);
            Assert.Equal("student\n", await File.ReadAllTextAsync(Path.Combine(folder, "terms", "class", "marks-2.csv")));
        }
        finally
        {
            Directory.Delete(Path.Combine(folder, "terms"), recursive: true);
        }
    }

    [Fact]
    public async Task Freezing_says_first_what_it_comes_to_and_keeps_what_was_given_out()
    {
        using var table = new Kept(In("term", "marks.csv"));
        Assert.Contains($"{Term}/freeze\">Freeze the grades to give them out", await desk.PageAsync(Term), StringComparison.Ordinal);
        var before = await desk.PageAsync(Term + "/freeze");
        Assert.Contains("24 grades are given out as they stand now", before, StringComparison.Ordinal);
        Assert.Matches(
            "[1-9][0-9]* grades may still change(.|\n)*<a href=\"marks/[^\"]*/work/[0-9]+\">Safety questions</a>: no mark yet for [A-Z](.|\n)*Frozen now",
            before
        );
        var frozen = await desk.DoneAsync(Term + "/freeze", ("why", "End of the term"));
        Assert.Matches("are frozen as they are. Of these, [1-9][0-9]* may still change", frozen);
        // Where one stands then, the pages to give out are one step away.
        foreach (var page in new[] { frozen, await desk.PageAsync(Term) })
            Assert.Matches("/given-out\" target=\"_blank\">All grade pages[a-z ]*, to print at once", page);
        var pages = await desk.PageAsync(Term + "/given-out");
        Assert.Equal(await desk.PageAsync(Term + "/sheets/grades-to-print.html"), pages);
        await ARenamedClassKeepsItsHistory();
        Assert.Equal(303, await desk.StatusAsync(await Form(Work("Percentages"), "/typed", ("m1.bao-nguyen", "24"))));
        for (var time = 0; time < 2; time++)
            Assert.Contains("1 student would have another result today", await desk.PageAsync(Term + "/freeze"), StringComparison.Ordinal);
        Assert.Contains("One of them says something else than was given out", await desk.PageAsync(Term), StringComparison.Ordinal);
        // What was given out is printed as it was, whatever the marks come to since.
        Assert.Equal(pages, await desk.PageAsync(Term + "/given-out"));
        Assert.NotEqual(pages, await desk.PageAsync(Term + "/sheets/grades-to-print.html"));
        await WhatWasGivenOutIsShownWhateverIsBroken();
    }

    /// <summary>A term that cannot be read still shows what was given out; a record that cannot be opened says which copy to take.</summary>
    private async Task WhatWasGivenOutIsShownWhateverIsBroken()
    {
        using (var text = new Kept(In("term", "term.md")))
        {
            await File.WriteAllTextAsync(
                text.Path,
                Encoding
                    .UTF8.GetString(text.Bytes)
                    .Replace("| Percentages | typed marks", "| Percentages | guessed marks", StringComparison.Ordinal)
            );
            var page = await desk.PageAsync(Term);
            Assert.Contains("They stand on record as they were given out.", page, StringComparison.Ordinal);
            Assert.Equal(24, Regex.Count(page[page.IndexOf("id=\"given-out\"", StringComparison.Ordinal)..], "<th scope=\"row\">"));
        }
        Assert.Contains("record-backups", await desk.DoneAsync(Term + "/copy"), StringComparison.Ordinal);
        using var record = new Kept(In("record.sqlite"));
        await File.WriteAllBytesAsync(record.Path, record.Bytes[..(record.Bytes.Length / 2)]);
        var broken = System.Net.WebUtility.HtmlDecode(await desk.PageAsync(Term));
        Assert.Contains("Its end is missing", broken, StringComparison.Ordinal);
        Assert.Contains("put the newest copy in its place: “record-backups/record-", broken, StringComparison.Ordinal);
    }

    /// <summary>What was dealt and given out under the earlier name is still its own, and no other class takes that name up.</summary>
    private async Task ARenamedClassKeepsItsHistory()
    {
        using var profile = new Kept(In("class.md"));
        Assert.Equal(303, await desk.StatusAsync(await Form("class/class", "", ("title", "Wednesday bakers"))));
        Assert.Contains("The marks come to the same today.", await desk.PageAsync(Term), StringComparison.Ordinal);
        await desk.DoneAsync(Term + "/record");
        using (var record = ClassKit.UseCases.Recording.RecordPlace.Open(desk.Folder.Root, RunningDesk.Now, mayBegin: false).Model!)
            Assert.Equal(["Wednesday bakers"], record.Read(ClassKit.Records.Classes.ClassRegister.All).Select(known => known.Name));
        using var taken = await desk.Client.SendAsync(desk.Request("classes/new", ("name", "Tuesday bakers")));
        Assert.Contains("was called", System.Net.WebUtility.HtmlDecode(await taken.Content.ReadAsStringAsync()), StringComparison.Ordinal);
    }

    private static IEnumerable<string> Said(ClassKit.UseCases.Output.Produced made) =>
        made.Notes.SelectMany(ClassKit.Wording.Notes.NoteWords.Of);

    private string In(params string[] steps) => Path.Combine([desk.Folder.Root, .. steps]);

    private static string Work(string title) =>
        $"{Term}/work/{Array.IndexOf(["Percentages", "Dough temperature", "Leavening sums", "Bench day one", "Bench day two", "How steam lifts", "Safety questions"], title) + 1}";

    /// <summary>The page's form as it is shown, with some fields typed anew.</summary>
    private async Task<HttpRequestMessage> Form(string page, string action, params (string Name, string Value)[] typed)
    {
        var shown = await desk.PageAsync(page);
        var form = shown[shown.IndexOf($"{page.Split('?')[0]}{action}\"", StringComparison.Ordinal)..];
        form = form[..form.IndexOf("</form>", StringComparison.Ordinal)];
        var fields = Inputs()
            .Matches(form)
            .Select(match => (Name: match.Groups["name"].Value, Value: System.Net.WebUtility.HtmlDecode(match.Groups["value"].Value)))
            .Concat(
                Selects()
                    .Matches(form)
                    .Select(match => (Name: match.Groups["name"].Value, Value: Chosen().Match(match.Value).Groups["value"].Value))
            );
        return desk.Request(
            page.Split('?')[0] + action,
            [.. fields.Where(field => field.Name is not ("token" or "") && typed.All(one => one.Name != field.Name)), .. typed]
        );
    }

    private async Task<string> Brought(string address, string name, byte[] content)
    {
        var request = desk.Request(address, []);
        var part = new ByteArrayContent(content);
        part.Headers.ContentDisposition = new("form-data") { Name = "file", FileNameStar = name };
        request.Content = new MultipartFormDataContent { { new StringContent(desk.Desk.Keys.FormToken), "token" }, part };
        using var answer = await desk.Client.SendAsync(request);
        return (int)answer.StatusCode == 303 ? "" : System.Net.WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }

    [GeneratedRegex("""<input [^>]*name="(?<name>[^"]*)"(?: value="(?<value>[^"]*)")?""")]
    private static partial Regex Inputs();

    [GeneratedRegex("""<select name="(?<name>[^"]*)".*?</select>""", RegexOptions.Singleline)]
    private static partial Regex Selects();

    [GeneratedRegex("<option (?:value=\"(?<value>[^\"]*)\" selected|selected[^>]*>(?<value>[^<]*)<)")]
    private static partial Regex Chosen();

    /// <summary>A file that is as it was afterwards.</summary>
    private sealed class Kept(string path) : IDisposable
    {
        public string Path => path;

        public byte[] Bytes { get; } = File.ReadAllBytes(path);

        public string[] Lines => Encoding.UTF8.GetString(Bytes).Split('\n', StringSplitOptions.RemoveEmptyEntries);

        public void Dispose() => File.WriteAllBytes(path, Bytes);
    }
}
