using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Solving;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Benches;
using ClassKit.Pages.Tests.Samples;
using ClassKit.Wording.Benches;

namespace ClassKit.Pages.Tests.Benches;

public sealed class BenchPagesTests
{
    private static readonly BenchPlan Plan = SamplePack.Pack.Bench.Plan!;
    private static readonly IDocument Drawing = Page(SamplePack.Pack, "bench-plan.html")!;
    private static readonly IDocument Sheets = Page(SamplePack.Pack, "run-sheets.html")!;

    [Fact]
    public void The_table_tells_every_step_of_the_plan()
    {
        var rows = Drawing
            .QuerySelectorAll("table:not(.fit) tbody tr:not(.group)")
            .Select(row => row.QuerySelectorAll("th, td").Take(3).Select(cell => cell.Text()).ToArray());
        var expected = Plan.Shifts.SelectMany(shift =>
            Plan.Class.Breads.SelectMany(
                (bread, at) =>
                    Plan.StepsOf(new(shift.Makers[0], at))
                        .Select(step => new[] { $"{step.Step + 1}. {bread.Steps[step.Step].Name}", Moment(step.Start), Moment(step.End) })
            )
        );

        Assert.Equal(expected, rows);
    }

    [Fact]
    public void Minutes_at_the_beginning_in_which_nobody_works_are_told_and_a_few_are_not()
    {
        var first = Plan.Steps.Min(step => step.Start);
        string Told(int from) =>
            Page(
                SamplePack.Pack with
                {
                    Bench = SamplePack.Pack.Bench with
                    {
                        Plan = Plan with { Class = Plan.Class with { Time = Plan.Class.Time with { SetupMinutes = from } } },
                    },
                },
                "bench-plan.html"
            )!.Body!.TextContent;

        Assert.Contains("Nobody works in the first 16", Told(first - 16), StringComparison.Ordinal);
        Assert.DoesNotContain("Nobody works", Told(first - 15), StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_series_compares_and_the_plan_does_not_treat_alike_stands_on_plan_and_guide()
    {
        // As if the second bread of the class were the first in another way.
        var plan = Plan with
        {
            Class = Plan.Class with
            {
                Breads =
                [
                    Plan.Class.Breads[0],
                    Plan.Class.Breads[1] with
                    {
                        VariantOf = Plan.Class.Breads[0].Id,
                    },
                    .. Plan.Class.Breads.Skip(2),
                ],
            },
        };
        var pack = SamplePack.Pack with { Bench = SamplePack.Pack.Bench with { Plan = plan } };
        string[] said = [.. SeriesDifferences.In(plan).Select(difference => SeriesDifferenceWords.Of(difference, plan.Class))];

        Assert.NotEmpty(said);
        Assert.All(["bench-plan.html", "guide.html"], (string file) =>
            Assert.All(said, words => Assert.Contains(words, Page(pack, file)!.Body!.TextContent, StringComparison.Ordinal))
        );
        Assert.DoesNotContain("the series", Drawing.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void That_all_of_a_series_is_treated_alike_is_said_too()
    {
        var (twin, at) = (
            Plan.Class.Breads[0] with
            {
                Id = "twin",
                VariantOf = Plan.Class.Breads[0].Id,
                Teams = [1],
            },
            Plan.Class.Breads.Count
        );
        var plan = Plan with
        {
            Class = Plan.Class with { Breads = [Plan.Class.Breads[0] with { Teams = [1] }, .. Plan.Class.Breads.Skip(1), twin] },
        };
        plan = plan with
        {
            Steps =
            [
                .. plan.Steps.Where(step => step.Load.Bread > 0 || step.Load.Maker.Team == 1),
                .. plan.StepsOf(new(Maker.OfTeam(1), 0)).Select(step => step with { Load = step.Load with { Bread = at } }),
            ],
        };

        Assert.Contains(
            "are treated alike: ",
            Page(SamplePack.Pack with { Bench = SamplePack.Pack.Bench with { Plan = plan } }, "bench-plan.html")!.Body!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_drawing_has_a_bar_for_every_step_and_tells_it_in_words()
    {
        var drawing = Drawing.QuerySelector("svg.timeline")!;
        var steps = Plan.Shifts.Sum(shift => Plan.Steps.Count(step => step.Load.Maker == shift.Makers[0]));

        Assert.True(drawing.QuerySelectorAll("rect.seg").Length >= steps + Plan.Demonstrations.Count);
        Assert.Contains(
            $"the tasting begins in minute {Plan.Class.Time.ReadyBy}",
            drawing.QuerySelector("desc")!.TextContent,
            StringComparison.Ordinal
        );
        Assert.NotEmpty(drawing.QuerySelector("title")!.TextContent);
    }

    [Fact]
    public void Every_team_finds_each_of_its_steps_and_every_demonstration_on_its_sheet()
    {
        for (var team = 1; team <= Plan.Class.Teams; team++)
        {
            var lines = Sheets
                .QuerySelectorAll($"#team-{team}")[0]
                .ParentElement!.ParentElement!.QuerySelectorAll("tbody tr")
                .Select(row => row.Text())
                .ToList();
            foreach (var step in Plan.Steps.Where(step => step.Load.Maker.Team == team))
            {
                var bread = Plan.Class.Breads[step.Load.Bread];
                Assert.Contains(lines, line =>
                    line.Contains(Clock(step.Start), StringComparison.Ordinal)
                    && line.Contains($"{step.Step + 1}. {bread.Steps[step.Step].Name}", StringComparison.Ordinal)
                    && line.Contains(bread.Name, StringComparison.Ordinal)
                );
            }
            Assert.All(Plan.Demonstrations, shown =>
                Assert.Contains(lines, line =>
                    line.Contains(Clock(shown.Start), StringComparison.Ordinal)
                    && line.Contains(shown.Demonstration.Name, StringComparison.Ordinal)
                )
            );
        }
    }

    [Theory]
    [InlineData("09:00", false)]
    [InlineData("23:30", false)]
    [InlineData("13:30", true)]
    public void A_class_that_tells_when_it_begins_finds_the_clock_beside_every_moment(string start, bool countsTwelve)
    {
        var begins = TimeOnly.Parse(start, CultureInfo.InvariantCulture);
        var pack = SamplePack.Pack with { Class = SamplePack.Pack.Class with { Start = new(begins, countsTwelve) } };

        var rows = Page(pack, "run-sheets.html")!
            .QuerySelectorAll(".run-sheet tbody tr")
            .Select(row => row.QuerySelectorAll("td, th").Select(cell => cell.Text().Trim()).ToArray())
            .ToList();

        Assert.NotEmpty(rows);
        Assert.All(rows, row =>
            Assert.Equal(
                begins.Add(TimeSpan.Parse(row[1], CultureInfo.InvariantCulture)),
                TimeOnly.Parse(row[2], CultureInfo.InvariantCulture)
            )
        );
        Assert.All(rows, row => Assert.Equal(countsTwelve, row[2].EndsWith('m')));
    }

    [Fact]
    public void A_class_that_does_not_tell_when_it_begins_reads_of_no_clock()
    {
        var pack = SamplePack.Pack with { Class = SamplePack.Pack.Class with { Start = null } };

        Assert.All(HtmlPages.Pack(pack), page => Assert.DoesNotContain("time-of-day\"", page.Html, StringComparison.Ordinal));
    }

    [Fact]
    public void The_instructor_sets_each_oven_before_anything_goes_into_it()
    {
        var lines = Sheets
            .QuerySelector("#instructor")!
            .ParentElement!.ParentElement!.QuerySelectorAll("tbody th")
            .Select(cell => cell.Text().Trim())
            .ToList();
        foreach (var oven in Plan.Steps.Select(step => step.Oven).OfType<int>().Distinct())
        {
            var set = lines.FindIndex(line => IsOf(line, "Set", oven));
            Assert.InRange(set, 0, lines.FindIndex(line => IsOf(line, "Into", oven)));
        }
        // The popovers' oven is turned down while it is shut.
        Assert.Contains(lines, line =>
            line.StartsWith("Turn ", StringComparison.Ordinal) && line.Contains("175", StringComparison.Ordinal)
        );

        static bool IsOf(string line, string act, int oven) => Regex.IsMatch(line, $"^{act} ovens? ([0-9, and]+ |){oven}\\b");
    }

    /// <summary>Nine ovens that are switched off in one minute are one line to tick, and not nine.</summary>
    [Fact]
    public void What_is_done_to_several_ovens_in_one_minute_is_one_line()
    {
        OvenEntry off = new(9, "Switch", " off", new(119, "", "", null, "", true));

        Assert.Equal(
            [(118, "Switch oven 2 off"), (119, "Switch ovens 7, 8 and 9 off")],
            RunSheets
                .AtOnce([off with { Oven = 2, Entry = off.Entry with { Minute = 118 } }, off, off with { Oven = 7 }, off with { Oven = 8 }])
                .Select(line => (line.Minute, line.What))
        );
    }

    [Fact]
    public void Where_no_plan_fits_the_conflict_and_the_changes_are_told_and_there_are_no_run_sheets()
    {
        var bench = BenchClasses.Of(SamplePack.Pack.Lesson, SamplePack.Pack.Class);
        var planning = new BenchPlanning(null, null, new([new(RuleKind.Period)], IsSmallest: false), [new LongerPeriod(35)], null);
        var pack = SamplePack.Pack with { Bench = planning };
        var text = Page(pack, "bench-plan.html")!.QuerySelector("main")!.Text();

        Assert.Contains(RuleWords.Of(new(RuleKind.Period), bench), text, StringComparison.Ordinal);
        Assert.Contains("that was not decided", text, StringComparison.Ordinal);
        Assert.Contains(PlanChangeWords.Of(new LongerPeriod(35), bench), text, StringComparison.Ordinal);
        Assert.Null(Page(pack, "run-sheets.html"));
        Assert.DoesNotContain("run-sheets.html", Page(pack, "index.html")!.DocumentElement.OuterHtml, StringComparison.Ordinal);
    }

    private static IDocument? Page(LessonPack pack, string file) =>
        HtmlPages.Pack(pack).Where(page => page.FileName == file).Select(page => Html.Parse(page.Html)).FirstOrDefault();

    /// <summary>With what the clock says then: the class begins at nine.</summary>
    private static string Moment(int minutes) => $"{Clock(minutes)} {9 + minutes / 60:00}:{minutes % 60:00}";

    private static string Clock(int minutes) => $"{minutes / 60}:{minutes % 60:00}";
}
