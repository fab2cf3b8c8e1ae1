using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Tests.Rosters;

public sealed class RosterReaderTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private Reading<Roster> Read(string text) => RosterReader.Read(_folder.Write("roster.csv", text), "Tuesday bakers");

    [Fact]
    public void The_demo_roster_has_24_students()
    {
        var roster = RosterReader.Read(Path.Combine(Repository.Demo, "roster.csv")).Model;

        Assert.NotNull(roster);
        Assert.Equal("", roster.Cohort);
        Assert.Equal(24, roster.Students.Count);
        Assert.Equal("Fuentes Vidal, Jorge", roster.Students.Single(student => student.Id == "jorge-fuentes-vidal").Name);
        Assert.All(roster.Students, student => Assert.EndsWith("@example.org", student.Email!, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("id,name,email\nana,Ana Lima,ana@example.org\nbo,Bo Li,\n")]
    [InlineData("\uFEFFid,name,email\r\nana,Ana Lima,ana@example.org\r\nbo,Bo Li,")]
    [InlineData("id;name;email\nana;Ana Lima;ana@example.org\n\nbo;Bo Li;\n")]
    [InlineData("id\tname\temail\nana\tAna Lima\tana@example.org\nbo\tBo Li\t\n")]
    [InlineData("Email,Name,Id\nana@example.org,Ana Lima,ana\n,Bo Li,bo\n")]
    [InlineData("id,name,email\n\"ana\",\"Ana Lima\",ana@example.org\nbo, Bo Li ,\n,,\n")]
    public void Rosters_as_spreadsheet_programs_write_them_are_read(string text)
    {
        var reading = Read(text);

        Assert.Empty(reading.Problems);
        Assert.Equal("Tuesday bakers", reading.Model!.Cohort);
        Assert.Equal([new("ana", "Ana Lima", "ana@example.org"), new("bo", "Bo Li")], reading.Model.Students);
    }

    [Fact]
    public void A_quoted_field_may_hold_separators_quotes_and_line_ends()
    {
        // RFC 4180, section 2, rules 6 and 7.
        var roster = Read("id,name\nana,\"Lima, \"\"Ana\"\"\nthe first\"\n").Model!;

        Assert.Equal("Lima, \"Ana\"\nthe first", roster.Students[0].Name);
    }

    [Theory]
    [InlineData("id,name\nana,Ana\nbo,Bo\nana,Anna\n", 4, "The id `ana` is in line 2 already", "an id of their own")]
    [InlineData("id,name\nAna Lima,Ana\n", 2, "The id is `Ana Lima`", "letters a to z")]
    [InlineData("id,name\n../../ana,Ana\n", 2, "The id is `../../ana`", "a file's name")]
    [InlineData("id,name\n,Ana\n", 2, "The student has no id", "letters a to z")]
    [InlineData("id,name\nana,Ana\nAna,Anna\n", 3, "differs from `ana` in line 2 only by capitals", "an id of their own")]
    [InlineData("first name,last name\nAna,Lima\nAna,Lima\n", 3, "The name `Ana Lima` is in line 2 already", "or add a column `id`")]
    [InlineData("id,team\nana,1\n", 1, "No column holds the students' names; there are `id`, `team`", "Call one column `name`")]
    [InlineData("id,name\nana,\n", 2, "The student `ana` has no name", "Write the name")]
    [InlineData("id,nmae\nana,Ana\n", 1, "No column holds the students' names; there are `id`, `nmae`", "Is `nmae` meant to be `name`?")]
    [InlineData("id;id;name\nana;ana;Ana\n", 1, "the column `id` twice", "Keep one")]
    [InlineData("id,name\nana,Lima, Ana\n", 2, "The line has 3 fields, and the header has 2", "Put quotes")]
    [InlineData("id,name\nana,\"Ana\nbo,Bo\n", 2, "A quote opens in this record and never closes", "Close it")]
    [InlineData("id,name\nana,\"Ana\" Lima\n", 2, "follows a closing quote", "written twice")]
    [InlineData("id,name\n", null, "There are no students", "below the header")]
    [InlineData("", null, "There are no students", "below the header")]
    public void A_mistake_is_named_with_its_line_and_the_way_out(string text, int? line, string found, string remedy, int problems = 1)
    {
        Complaint.Among(Read(text), problems, line, found, remedy);
    }

    /// <summary>
    /// Two of one name go by their addresses, whatever order the list is in; where an address is missing, shared or somebody else's id,
    /// nobody is guessed at.
    /// </summary>
    [Fact]
    public void Two_of_one_name_are_told_apart_by_their_addresses_or_not_at_all()
    {
        string[] lines = ["Ana Lima,ana.l@example.org", "Bo Ek,", "Ana Lima,lima.ana@example.org"];
        foreach (var order in new[] { lines, [.. lines.Reverse()] })
            Assert.Equal(
                ["ana-l ana.l@example.org", "bo-ek ", "lima-ana lima.ana@example.org"],
                Read("name,email\n" + string.Join('\n', order) + "\n")
                    .Model!.Students.Select(student => $"{student.Id} {student.Email}")
                    .Order()
            );
        foreach (var second in new[] { "", "ana.l@example.org", "bo-ek@example.org" })
            Assert.Contains(Read($"name,email\nAna Lima,ana.l@example.org\nBo Ek,\nAna Lima,{second}\n").Problems, problem =>
                problem.ToString().Contains("add a column `id`", StringComparison.OrdinalIgnoreCase)
            );
    }

    /// <summary>
    /// Microsoft Learn, "Naming Files, Paths, and Namespaces": reserved names, reserved characters, and no space or period at the end.
    /// </summary>
    [Theory]
    [InlineData("con", "Windows keeps that name")]
    [InlineData("prn", "Windows keeps that name")]
    [InlineData("aux", "Windows keeps that name")]
    [InlineData("nul", "Windows keeps that name")]
    [InlineData("com0", "Windows keeps that name")]
    [InlineData("com1", "Windows keeps that name")]
    [InlineData("com9", "Windows keeps that name")]
    [InlineData("lpt1", "Windows keeps that name")]
    [InlineData("lpt9", "Windows keeps that name")]
    [InlineData("CON", "Windows keeps that name")]
    [InlineData("con.xlsx", "Windows keeps that name")]
    [InlineData("Ana", null)]
    [InlineData("A.Lima-07", null)]
    [InlineData("ana.", "not ending with a dot")]
    [InlineData("\"\"\"ana \"\"\"", "letters a to z")]
    [InlineData("\"a\nb\"", "letters a to z")]
    [InlineData("\"ana\n\"", null)]
    [InlineData("a<b", "letters a to z")]
    [InlineData("a>b", "letters a to z")]
    [InlineData("a:b", "letters a to z")]
    [InlineData("a/b", "letters a to z")]
    [InlineData("a\\b", "letters a to z")]
    [InlineData("a|b", "letters a to z")]
    [InlineData("a?b", "letters a to z")]
    [InlineData("a*b", "letters a to z")]
    [InlineData("a\u202Eb", "letters a to z")]
    [InlineData("aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa", "at most 64")]
    [InlineData("com10", null)]
    [InlineData("connie", null)]
    [InlineData("aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa", null)]
    public void An_id_that_cannot_be_a_files_name_on_every_system_is_refused(string id, string? remedy)
    {
        var reading = Read($"id,name\n{id},Ana\n");

        if (remedy is null)
            Assert.Matches(@"\A[A-Za-z0-9.-]+\z", reading.Model!.Students[0].Id);
        else
            Complaint.Only(reading, 2, "The id is", remedy);
    }

    [Fact]
    public void What_is_no_text_is_refused() =>
        Complaint.Only(
            RosterReader.Read(_folder.WriteBytes("zip.csv", [0x50, 0x4B, 3, 4, 0, 0])),
            null,
            "not text",
            "Save the list as .xlsx, .ods or CSV"
        );
}
