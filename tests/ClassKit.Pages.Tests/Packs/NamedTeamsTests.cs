using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Measured;
using ClassKit.Pages.Tests.Samples;
using ClassKit.Terms.Bench;
using ClassKit.Workbooks.Bench;
using ClassKit.Workbooks.Returned;

namespace ClassKit.Pages.Tests.Packs;

/// <summary>
/// Teams that the class list names are called so wherever a class is told who does what, and each has as many people as the list puts in
/// it.
/// </summary>
public sealed class NamedTeamsTests
{
    private static readonly IReadOnlyList<ClassTeam> Teams = ClassTeam.Of([
        .. "Oat Oat Oat Rye Rye Rye Rye Corn Corn".Split(' ').Select((team, at) => new Student($"s{at}", $"Student {at}") { Team = team }),
    ]);

    private static readonly Lazy<Dictionary<string, string>> Pages = new(() =>
    {
        var pack = SamplePack.For(SamplePack.Pack.Class with { Students = 9, Teams = 3, NamedTeams = Teams });
        return HtmlPages.Pack(pack).ToDictionary(page => page.FileName, page => Html.Parse(page.Html).Body!.TextContent);
    });

    [Theory]
    [InlineData(
        "run-sheets.html",
        "Team Corn",
        "2 students",
        "Team Oat",
        "3 students",
        "Team Rye",
        "4 students",
        "teams Corn, Oat and Rye"
    )]
    [InlineData("stations.html", "team Corn (2 students), team Oat (3 students) and team Rye (4 students)")]
    [InlineData("index.html", "one for each team: Corn, Oat and Rye")]
    [InlineData("tasting-key.html", "of teams Corn and Rye", "of team Oat")]
    public void Pages_of_a_pack_call_them_so(string page, params string[] words)
    {
        Assert.All(words, expected => Assert.Contains(expected, Pages.Value[page], StringComparison.Ordinal));
        Assert.DoesNotMatch(@"(?i)\bteams? [1-3]\b", Pages.Value[page]);
    }

    /// <summary>
    /// A step for three people takes no longer in a class where one team has two: it is planned with the hands that the smallest has.
    /// </summary>
    [Fact]
    public void The_plan_counts_on_the_hands_of_the_smallest() =>
        Assert.Equal(
            2,
            SamplePack.For(SamplePack.Pack.Class with { Students = 9, Teams = 3, NamedTeams = Teams }).Bench.Plan!.Class.PeoplePerTeam
        );

    [Fact]
    public void Forms_offer_them_by_their_names()
    {
        var pack = SamplePack.For(SamplePack.Pack.Class with { Students = 9, Teams = 3, NamedTeams = Teams });
        var observed = Html.Parse(HtmlPages.ObservationForm(new ObservationForm(pack)));
        Assert.Equal(
            ["Team Corn", "Team Oat", "Team Rye"],
            observed.QuerySelectorAll("#teams option").Select(option => option.GetAttribute("value"))
        );

        var form = new BenchForm(
            "Bench",
            new([("Safe", 1)], [0, 1], ["Not yet", "Secure"]),
            [
                ["a", "b"],
            ],
            "Class",
            [.. Teams.SelectMany(team => team.Members)],
            3
        );
        var page = Html.Parse(HtmlPages.BenchForm(form));
        Assert.Equal(
            ["Team Corn", "Team Oat", "Team Rye"],
            page.QuerySelectorAll("section[id^='team-'] h2").Select(head => head.TextContent)
        );
        Assert.Equal("Rye", page.QuerySelector("select[data-field='student.s4.team']")!.GetAttribute("data-usual"));

        // Who is in a team is listed by what stands in the choices beside the names: another word for the team would leave the list empty.
        Assert.Equal(
            page.QuerySelectorAll("select[data-field='student.s4.team'] option")
                .Select(option => option.GetAttribute("value"))
                .Except([BenchForm.Away]),
            page.QuerySelectorAll("[data-members]").Select(line => line.GetAttribute("data-members"))
        );

        var book = BenchMarksReader.Read(BenchMarksWriter.Write(form), form);
        Assert.Equal(
            ("Corn", "Oat", "Rye"),
            (book.Fields["student.s7.team"], book.Fields["student.s0.team"], book.Fields["student.s4.team"])
        );
        Assert.Contains(
            "Team Rye",
            ReturnedWorkbookReader
                .Read(BenchMarksWriter.Write(form))
                .Workbook!.Sheets[0]
                .Cells.Values.Select(cell => cell.Stored.ToString())
        );
    }
}
