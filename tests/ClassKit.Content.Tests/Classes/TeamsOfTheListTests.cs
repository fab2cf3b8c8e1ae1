using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;
using ClassKit.Lessons.Classes;

namespace ClassKit.Content.Tests.Classes;

/// <summary>A class that names its list has the list's teams; numbers beside them are held against it.</summary>
public sealed class TeamsOfTheListTests : IDisposable
{
    private const string List = "id,name,Group\nana,Ana,Team 10\nbo,Bo,team 9\ncy,Cy,Team 10\ndi,Di,rye\ned,Ed,Rye\n";
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Teams_are_called_as_the_list_has_them_numbers_first_and_counted_there()
    {
        var profile = Read(List, "").Model!;

        Assert.Equal((5, 3, 1), (profile.Students, profile.Teams, profile.SmallestTeam));
        Assert.Equal(["9", "10", "rye"], Enumerable.Range(1, 3).Select(profile.TeamName));
        Assert.Equal(
            ["bo", "ana cy", "di ed"],
            profile.NamedTeams.Select(team => string.Join(' ', team.Members.Select(student => student.Id)))
        );
    }

    [Theory]
    [InlineData("students: 5\nteams: 3\n", null, null)]
    [InlineData("students: 5\nteams: 4\n", "`teams` is 4, and the class list has 3: 9, 10, rye", "The list counts")]
    [InlineData("students: 6\nteams: 3\n", "`students` is 6, and the class list has 5", "The list counts")]
    public void Numbers_beside_it_that_say_something_else_are_said_and_the_list_counts(string lines, string? found, string? remedy)
    {
        var reading = Read(List, lines);

        Assert.Equal((5, 3), (reading.Model!.Students, reading.Model.Teams));
        Assert.Equal(found is null ? 0 : 1, reading.Doubts.Count);
        if (found is not null)
            Assert.Equal(
                (found, true),
                (reading.Doubts[0].Found, reading.Doubts[0].Expected.StartsWith(remedy!, StringComparison.Ordinal))
            );
    }

    /// <summary>A column that puts everybody in the same group is the year's, not the bench's.</summary>
    [Theory]
    [InlineData("id,name,group\nana,Ana,10B\nbo,Bo,10B\n")]
    [InlineData("id,name\nana,Ana\nbo,Bo\n")]
    public void A_list_without_teams_leaves_the_number_to_the_class(string list)
    {
        var profile = Read(list, "students: 2\nteams: 2\n").Model!;

        Assert.Equal((2, "1", 0), (profile.Teams, profile.TeamName(1), profile.NamedTeams.Count));
        Assert.Contains("`teams` is missing", string.Join('\n', Read(list, "students: 2\n").Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Who_is_in_no_team_is_named()
    {
        var doubt = Assert.Single(Read(List + "flo,Flo,\n", "").Doubts);
        Assert.Equal(("`flo` is in no team, and the list has teams `9`, `10`, `rye`", 7), (doubt.Found, doubt.Line));
    }

    /// <summary>Terms name a roster too; a class stays a class, whatever its file is called.</summary>
    [Fact]
    public void A_class_that_names_its_list_is_no_term_and_a_list_that_is_not_there_is_an_error()
    {
        Read(List, "");
        Assert.Equal(ContentKind.ClassProfile, ContentRecognition.Of(Library.OfPaths().At(Path.Combine(_folder.Path, "tuesday.md"))));
        Assert.Contains("There is no file", Assert.Single(Read(null, "students: 2\nteams: 2\n").Problems).Found, StringComparison.Ordinal);
    }

    private Reading<ClassProfile> Read(string? list, string lines)
    {
        if (list is not null)
            _folder.Write("list.csv", list);
        return ClassProfileReader.Read(
            _folder.Write(
                "tuesday.md",
                $"""
                ---
                kitchen: Kitchen
                {lines}roster: {(list is null ? "nowhere.csv" : "list.csv")}
                pieces per team: 6
                period: 150 min
                kitchen temperature: 22 °C
                altitude: 0 m
                scale: 1 g
                small scale: 0.1 g
                ovens: 2
                allergies: []
                units: metric
                ---

                # Tuesday
                """
            )
        );
    }
}
