using System.Globalization;
using AngleSharp.Html.Parser;
using ClassKit.Content.Classes;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;
using ClassKit.Pages;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;

namespace ClassKit.LessonPacks.Tests.Observations;

/// <summary>
/// Six teams share out three ways of a roll, two teams each; by hand: as written 40 and 42 mm, over-proofed 34 and 36 mm, so 6 mm less. Each
/// of the two has a variance of 2 and of 1 for its mean: the standard error is √2, with 2 degrees of freedom t is 4.303 (Student's table), and
/// the interval ends at −6 ± 6.08.
/// </summary>
public sealed class SeriesMeasuredTests
{
    private static readonly LessonPack Pack = BuildPack
        .Run(
            BuildPack
                .Read(Repository.PathOf("lessons", "one-dough-three-clocks"), Repository.PathOf("demo-cohort", "long-morning-class.md"))
                .Model! with
            {
                Profile = ClassProfileReader.Read(Repository.PathOf("demo-cohort", "long-morning-class.md")).Model! with
                {
                    Teams = 6,
                    Students = 18,
                },
            },
            Run.Unwatched
        )
        .Model!;

    private static readonly IReadOnlyList<FormulaOf> Ways =
    [
        .. Pack.Cards.Where(card => card.Bread.Place?.OfId == "yeast_rolls").Select(card => new FormulaOf(card.Bread, card.Teams)),
    ];

    [Fact]
    public void Every_way_is_held_against_the_bread_as_written_over_the_teams_that_made_them()
    {
        var measured = MeasuredClass.Of(Pack, [.. Enumerable.Range(1, 6).Select(Team)]);
        var over = measured.Series.Single(line =>
            line.Changed.Asked.Measure == Measure.Height
            && line.Bread.Compared.Bread.Formula.Title.Contains("over-proofed", StringComparison.OrdinalIgnoreCase)
        );

        Assert.Equal((2, 2), (over.Difference.Teams, over.Difference.Others));
        Assert.Equal(-6, over.Difference.Mean, 9);
        Assert.Equal(-6 - 4.303 * Math.Sqrt(2), over.Difference.Interval!.Value.Low, 5e-3);
        Assert.Equal(-6 + 4.303 * Math.Sqrt(2), over.Difference.Interval!.Value.High, 5e-3);
        Assert.DoesNotContain(measured.Series, line => line.Changed.Asked.Measure is Measure.MassBefore or Measure.GuessedHeight);
    }

    [Fact]
    public void The_page_says_so_beside_the_number_of_teams()
    {
        var page = new HtmlParser().ParseDocument(
            HtmlPages.ObservedClass(Pack, MeasuredClass.Of(Pack, [.. Enumerable.Range(1, 6).Select(Team)]), [])
        );
        var rows = page.QuerySelectorAll("section[aria-labelledby=series] tbody")
            .Single(body => body.QuerySelector("th")!.TextContent.Contains("over-proofed", StringComparison.Ordinal))
            .QuerySelectorAll("tr")
            .Skip(1);

        Assert.Equal(
            ["Height", "41 mm (2)", "35 mm (2)", "−6 mm", "−12 mm to +0 mm: could as well be none"],
            Assert.Single(rows).Children.Select(cell => cell.Words().Replace('\u00A0', ' '))
        );
        Assert.Null(
            new HtmlParser()
                .ParseDocument(HtmlPages.ObservedClass(Pack, MeasuredClass.Of(Pack, [Team(1)]), []))
                .QuerySelector("section[aria-labelledby=series]")
        );
    }

    /// <summary>Each team measures the way that fell to it.</summary>
    private static TeamMeasurements Team(int team)
    {
        var form = new ObservationForm(Pack);
        var mine = Ways.Index().First(way => way.Item.Teams.Contains(team));
        var height = new[] { 40, 30, 34 }[mine.Index] + (mine.Item.Teams.ToList().IndexOf(team) * 2);
        return TeamMeasurements.Of(
            form,
            new Dictionary<string, string>
            {
                [ObservationForm.Team] = $"Team {team}",
                [ObservationForm.Field(mine.Item.Bread, Measure.Height, 1)] = height.ToString(CultureInfo.InvariantCulture),
            },
            "file"
        );
    }

    private sealed record FormulaOf(LessonFormula Bread, IReadOnlyList<int> Teams);
}
