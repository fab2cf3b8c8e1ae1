using System.Net;
using ClassKit.Content.Rosters;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Kitchen;

/// <summary>
/// A list that takes another one's place gives nobody's work to somebody else: who is who is never guessed. Lists as schools number them,
/// common practice, no source.
/// </summary>
public sealed class SamePeopleTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Numbered = "No,Surname,First name\n1,CHEN,Mei\n2,DIALLO,Awa\n3,PARK,Leo\n4,HALL,Ivy\n5,WOOD,Max\n",
        Without = "No,Surname,First name\n1,CHEN,Mei\n2,DIALLO,Awa\n3,HALL,Ivy\n4,WOOD,Max\n";

    [Fact]
    public async Task Numbers_that_count_the_lines_are_nobodys_id()
    {
        await TakeAsync(Numbered);

        var page = await PasteAsync(Without);

        Assert.Contains("<dt>New</dt><dd>nobody</dd>", page, StringComparison.Ordinal);
        Assert.Contains("<dt>No longer on it</dt><dd>Leo PARK</dd>", page, StringComparison.Ordinal);
        Assert.Contains("“No” only counts the lines", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<dt>Left aside</dt>", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ids_that_were_given_anew_are_refused_with_both_names()
    {
        await TakeAsync(Numbered.Replace("No,", "id,", StringComparison.Ordinal));

        var page = await PasteAsync(Without.Replace("No,", "id,", StringComparison.Ordinal));

        Assert.Contains("<td>Leo PARK (3)</td><td>Ivy HALL (3)</td>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Take this list", page, StringComparison.Ordinal);
        Assert.Equal(200, await desk.StatusAsync(desk.Request("class/class/roster/take", ("renamed", "yes"), ("who", "same"))));
        Assert.Equal(5, Now().Count);
    }

    [Fact]
    public async Task Another_name_under_a_known_id_is_asked_about_and_then_remembered()
    {
        await TakeAsync("id,name\na1,Mei Chen\na2,Awa Diallo\na3,Leo Park\n");

        var page = await PasteAsync("id,name\na1,\"CHEN, Mei\"\na2,Awa Diallo\na3,Zoe Lund\n");

        Assert.Contains("<td>Leo Park (a3)</td><td>Zoe Lund (a3)</td>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Mei Chen (a1)", page, StringComparison.Ordinal);
        Assert.Equal(200, await desk.StatusAsync(desk.Request("class/class/roster/take", [])));
        Assert.Equal("Leo Park", Now()[2].Name);
        Assert.Equal(303, await desk.StatusAsync(desk.Request("class/class/roster/take", ("renamed", "yes"))));
        Assert.Equal(("Zoe Lund", "Leo Park"), (Now()[2].Name, Now()[2].Formerly));

        Assert.DoesNotContain("renamed", await PasteAsync("id,name\na3,Zoe Lund\n"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_people_under_other_ids_stay_who_they_are_where_that_is_said()
    {
        await TakeAsync(
            "id,name,email\n10235,Tom Evans,te1@example.org\n10236,Tom Evans,te2@example.org\n10237,Kate Moss,km@example.org\n"
        );

        var page = await PasteAsync(
            "name,email\nTom Evans,te2@example.org\nTom Evans,te1@example.org\nKate Moss,km@example.org\nBo Cole,bo@example.org\n"
        );

        Assert.Contains("<dt>New</dt><dd>Bo Cole</dd>", page, StringComparison.Ordinal);
        Assert.Contains("<dt>No longer on it</dt><dd>nobody</dd>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"go\" type=\"submit\">Take", page, StringComparison.Ordinal);
        Assert.Equal(200, await desk.StatusAsync(desk.Request("class/class/roster/take", [])));
        Assert.Equal(303, await desk.StatusAsync(desk.Request("class/class/roster/take", ("who", "same"))));
        Assert.Equal(
            ["10236 te2@example.org", "10235 te1@example.org", "10237 km@example.org", "bo bo@example.org"],
            Now().Select(student => $"{student.Id} {student.Email}")
        );
    }

    [Fact]
    public async Task What_was_arranged_goes_over_to_a_list_that_has_no_column_for_it()
    {
        await TakeAsync("id,name,team,large print,extra time\na1,Ivy Hall,1,yes,\na2,Kate Moss,2,,25 %\na3,Leo Park,2,,\n");

        var page = await PasteAsync("id,name\na2,Kate Moss\na1,Ivy Hall\na4,Bo Cole\nTotal students: 3\n");
        Assert.Contains("Kate Moss: team 2, extra time 25 %", page, StringComparison.Ordinal);
        Assert.Contains("Ivy Hall: team 1, large print yes", page, StringComparison.Ordinal);
        Assert.Equal(303, await desk.StatusAsync(desk.Request("class/class/roster/take", [])));

        var roster = RosterReader.Read(Path.Combine(desk.Folder.Root, "roster.csv")).Model!;
        Assert.Equal(["a2 2", "a1 1", "a4 "], roster.Students.Select(student => $"{student.Id} {student.Team}"));
        Assert.Equal((0.25m, true), (roster.ArrangementOf("a2").ExtraTime, roster.ArrangementOf("a1").LargePrint));
        Assert.True(roster.ArrangementOf("a4").IsNone);

        // A list that says it otherwise is believed, and says so first.
        Assert.Contains(
            "Kate Moss: 25 % more time, and now nothing",
            await PasteAsync("id,name,extra time\na2,Kate Moss,\na1,Ivy Hall,\n"),
            StringComparison.Ordinal
        );
    }

    private IReadOnlyList<Exercises.Cohorts.Student> Now() =>
        RosterReader.Read(Path.Combine(desk.Folder.Root, "roster.csv")).Model!.Students;

    /// <summary>The class's list as it is to begin with.</summary>
    private Task TakeAsync(string list) => File.WriteAllTextAsync(Path.Combine(desk.Folder.Root, "roster.csv"), list);

    private async Task<string> PasteAsync(string list)
    {
        using var answer = await desk.Client.SendAsync(desk.Request("class/class/roster/paste", ("names", list)));
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }
}
