using System.Net;
using ClassKit.Content.Rosters;
using ClassKit.Desk.Kitchen;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Kitchen;

/// <summary>
/// A class's list, pasted or brought as a file: what it changes is said before it takes the old one's place, which stays beside it.
/// </summary>
public sealed class RosterTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    /// <summary>Two lists in two windows: the page that shows the first never takes the second.</summary>
    [Fact]
    public async Task The_list_that_is_taken_is_the_one_that_the_page_shows()
    {
        var file = Path.Combine(desk.Folder.Root, "roster.csv");
        var before = await File.ReadAllBytesAsync(file);
        async Task<string> Look(string names) =>
            System
                .Text.RegularExpressions.Regex.Match(
                    await Answer(desk.Request("class/class/roster/paste", ("names", names))),
                    "name=\"draft\" value=\"(?<key>[^\"]*)\""
                )
                .Groups["key"]
                .Value;
        var first = await Look("Ada Berg\nBo Cole\n");
        Assert.NotEqual("", first);
        await Look("Cleo Dietz\n");

        Assert.Contains(
            "Another list was brought meanwhile",
            await Answer(desk.Request("class/class/roster/take", ("who", "new"), ("draft", first))),
            StringComparison.Ordinal
        );
        Assert.Equal(before, await File.ReadAllBytesAsync(file));
    }

    [Fact]
    public async Task Pasted_names_take_the_place_of_the_list_after_it_was_said_what_breaks()
    {
        var file = Path.Combine(desk.Folder.Root, "roster.csv");
        var before = await File.ReadAllBytesAsync(file);
        var page = await Answer(desk.Request("class/class/roster/paste", ("names", "Osei, Amara\nBo \"Bob\" Cole\n")));
        Assert.Contains("2 students; the class’s page says 24", page, StringComparison.Ordinal);
        Assert.Contains("Rosa Whitehorse", page, StringComparison.Ordinal);
        Assert.Matches(
            "Who would be gone has marks there: [^<]*Anders Lindqvist; [^<]*bench-day-one\\.csv|Who would be gone has marks there: [^<]*Anders Lindqvist",
            page
        );
        Assert.DoesNotContain("“anders-lindqvist”", page, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllBytesAsync(file));

        Assert.Equal(303, await desk.StatusAsync(desk.Request("class/class/roster/take", ("who", "new"))));
        Assert.Equal(["Osei, Amara", "Bo \"Bob\" Cole"], RosterReader.Read(file).Model!.Students.Select(student => student.Name));
        var kept = Path.Combine(desk.Folder.Root, "previous-roster-1.csv");
        Assert.Equal(before, await File.ReadAllBytesAsync(kept));

        // The list before is looked at like any other, and taken back the same way.
        Assert.Contains("24 students", await Answer(desk.Request("class/class/roster/previous", [])), StringComparison.Ordinal);
        Assert.Equal(303, await desk.StatusAsync(desk.Request("class/class/roster/take", ("who", "new"))));
        Assert.Equal(before, await File.ReadAllBytesAsync(file));
        await Answer(desk.Request("class/class/roster/paste", ("names", "Osei, Amara\n")));
        Assert.Equal(303, await desk.StatusAsync(desk.Request("class/class/roster/take", ("who", "new"))));

        // Of many lists the last few stay, the newest first.
        for (var pasted = 0; pasted < 4; pasted++)
        {
            await Answer(desk.Request("class/class/roster/paste", ("names", $"Ada Berg {(char)('A' + pasted)}\n")));
            Assert.Equal(303, await desk.StatusAsync(desk.Request("class/class/roster/take", ("who", "new"))));
        }
        Assert.Equal(
            ["previous-roster-1.csv", "previous-roster-2.csv", "previous-roster-3.csv"],
            Directory.EnumerateFiles(desk.Folder.Root, "previous-*").Select(Path.GetFileName).Order()
        );
        Assert.Contains("Ada Berg C", await File.ReadAllTextAsync(kept), StringComparison.Ordinal);
        await File.WriteAllBytesAsync(file, before);
    }

    /// <summary>A folder that was copied or unzipped says nothing of when its files were written; the last of the lists goes all the same.</summary>
    [Fact]
    public async Task The_last_list_goes_whatever_the_files_say_of_when_they_were_written()
    {
        var (file, folder) = (Path.Combine(desk.Folder.Root, "roster.csv"), desk.Folder.Root);
        var before = await File.ReadAllBytesAsync(file);
        for (var number = 1; number <= NewRoster.MostBefore; number++)
        {
            var list = Path.Combine(folder, $"previous-roster-{number}.csv");
            await File.WriteAllTextAsync(list, $"name\nList {number}\n");
            File.SetLastWriteTimeUtc(list, new DateTime(2026, 9, number, 8, 0, 0, DateTimeKind.Utc));
        }

        await Answer(desk.Request("class/class/roster/paste", ("names", "Ada Berg\n")));
        Assert.Equal(303, await desk.StatusAsync(desk.Request("class/class/roster/take", ("who", "new"))));

        string[] lists = [.. Directory.EnumerateFiles(folder, "previous-*").Order()];
        Assert.Equal(NewRoster.MostBefore, lists.Length);
        Assert.Equal(before, await File.ReadAllBytesAsync(lists[0]));
        Assert.Equal(["List 1", "List 2"], lists[1..].Select(list => File.ReadAllLines(list)[1]));
        foreach (var earlier in lists)
            File.Delete(earlier);
        await File.WriteAllBytesAsync(file, before);
    }

    /// <summary>Another list lies where the new one is to go.</summary>
    [Fact]
    public async Task A_list_that_cannot_take_its_place_leaves_everything_as_it_was()
    {
        var taken = Path.Combine(desk.Folder.Root, "roster.tsv");
        await File.WriteAllTextAsync(taken, "somebody else's");
        Dictionary<string, byte[]> Lists() =>
            Directory.EnumerateFiles(desk.Folder.Root, "*roster*").Order().ToDictionary(file => file, File.ReadAllBytes);
        var before = Lists();
        var known = desk.Folder.Class("class")!;

        var refused = NewRoster.Of(desk.Folder, known, "list.tsv", "name\nAda Berg\n"u8.ToArray()).Write(known);

        Assert.Contains("It could not be written", refused!.Found, StringComparison.Ordinal);
        Assert.Equal(before, Lists());
        File.Delete(taken);
    }

    /// <summary>What is refused stands there to be put right, and names the line that was pasted with what is on it.</summary>
    [Fact]
    public async Task A_list_that_is_refused_is_not_lost()
    {
        const string Names = "10235\tEVANS\tTom\n10236\tHALL\tIvy\n\n10235\tFOX\tRuby";
        var page = await Answer(
            desk.Request(
                "class/class/roster/columns",
                ("names", Names),
                ("column.0", "Id"),
                ("column.1", "LastName"),
                ("column.2", "FirstName")
            )
        );
        Assert.Contains(
            "Line 4 of what you pasted, “10235, FOX, Ruby”: The id “10235” is in line 1 already",
            page,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Line 3 of what you pasted, “Doe, Sam”: The name “Doe, Sam” is in line 2 already",
            await Answer(desk.Request("class/class/roster/paste", ("names", "Ångström, Åsa\nDoe, Sam\nDoe, Sam\n"))),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("roster.csv", page, StringComparison.Ordinal);
        Assert.Contains(">\n" + Names + "</textarea>", page, StringComparison.Ordinal);
    }

    /// <summary>
    /// A footer is nobody, and what the class's page says follows where that is ticked and would hold: six teams for two students would
    /// not.
    /// </summary>
    [Theory]
    [InlineData(30, "30")]
    [InlineData(2, "24")]
    public async Task A_list_sets_the_size_of_the_class_where_that_is_ticked(int count, string students)
    {
        var (file, profile) = (Path.Combine(desk.Folder.Root, "roster.csv"), Path.Combine(desk.Folder.Root, "class.md"));
        var (before, text) = (await File.ReadAllBytesAsync(file), await File.ReadAllTextAsync(profile));
        var page = await Answer(
            desk.Request(
                "class/class/roster/paste",
                (
                    "names",
                    "name\n"
                        + string.Concat(
                            Enumerable
                                .Range(1, count)
                                .Select(number => $"Student {(char)('A' + (number % 26))} {(char)('A' + (number / 26))}\n")
                        )
                        + $"Total students: {count}\n"
                )
            )
        );
        Assert.Contains($"set the class to {count} students", page, StringComparison.Ordinal);
        Assert.Contains($"“Total students: {count}”, below the students", page, StringComparison.Ordinal);
        Assert.DoesNotContain("E-mail</th>", page, StringComparison.Ordinal);

        Assert.Equal(303, await desk.StatusAsync(desk.Request("class/class/roster/take", ("size", "yes"))));
        Assert.Equal(count, RosterReader.Read(file).Model!.Students.Count);
        Assert.Contains($"\nstudents: {students}\n", await File.ReadAllTextAsync(profile), StringComparison.Ordinal);
        foreach (var earlier in Directory.EnumerateFiles(desk.Folder.Root, "previous-*").ToList())
            File.Delete(earlier);
        await File.WriteAllBytesAsync(file, before);
        await File.WriteAllTextAsync(profile, text);
    }

    [Fact]
    public async Task A_table_that_was_copied_keeps_its_columns()
    {
        var page = await Answer(
            desk.Request("class/class/roster/paste", ("names", "First name\tLast name\tE-mail\nAda\tBerg\tada.berg@example.org"))
        );
        Assert.Contains("<th scope=\"row\">Ada Berg</th><td>ada.berg@example.org</td>", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\t")]
    [InlineData(";")]
    [InlineData(",")]
    public async Task Cells_without_a_heading_are_asked_about_and_never_run_together(string separator)
    {
        var names =
            string.Join(separator, "Abbate", "Lucia", "lucia@example.org", "large print")
            + "\n"
            + string.Join(separator, "Ruiz", "Tom", "tom@example.org", "");
        var asked = await Answer(desk.Request("class/class/roster/paste", ("names", names)));
        Assert.Contains("Which column is which?", asked, StringComparison.Ordinal);
        Assert.Matches("<option value=\"Email\" selected", asked);
        var page = await Answer(
            desk.Request(
                "class/class/roster/columns",
                ("names", names),
                ("column.0", "LastName"),
                ("column.1", "FirstName"),
                ("column.2", "Email"),
                ("column.3", "")
            )
        );
        Assert.Contains("<th scope=\"row\">Lucia Abbate</th><td>lucia@example.org</td>", page, StringComparison.Ordinal);
        Assert.Contains("2 students", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_column_that_nothing_is_read_from_is_said_before_the_list_is_taken()
    {
        var page = await Answer(desk.Request("class/class/roster/paste", ("names", "name,Remarks,extra time\nAda Berg,large print,25 %")));
        Assert.Contains("Left aside</dt><dd><strong>“Remarks”", page, StringComparison.Ordinal);
        Assert.Matches("Ada Berg</th><td>[^<]*25", page);
    }

    /// <summary>
    /// A school's workbook becomes a table beside the class, so that what is arranged can be typed on its page; a title above and a total
    /// below stay behind.
    /// </summary>
    [Fact]
    public void A_workbook_becomes_a_list_that_can_be_changed_here()
    {
        using var book = new ClosedXML.Excel.XLWorkbook();
        var sheet = book.AddWorksheet();
        foreach (
            var (row, cells) in new[]
            {
                ["Bread class, autumn"],
                ["No.", "Name", "E-mail", "Remarks"],
                ["1", "Ana \"Annie\" Lima", "ana@example.org", "left-handed; asks, often"],
                ["2", "Łukasz Nowak", "nowak@example.org"],
                new[] { "", "Total students: 2" },
            }.Index()
        )
        foreach (var (column, cell) in cells.Index())
            sheet.Cell(row + 1, column + 1).Value = cell;
        using var bytes = new MemoryStream();
        book.SaveAs(bytes);
        var known = desk.Folder.Class("class")!;
        var list = NewRoster.Of(desk.Folder, known, "School list.XLSX", bytes.ToArray());

        Assert.Equal(known.Roster, list.File);
        Assert.Equal(["Ana \"Annie\" Lima", "Łukasz Nowak"], list.Read.Model!.Students.Select(student => student.Name));
        Assert.Equal(["Total students: 2"], list.Read.Model.Origin!.Below);
        Assert.Equal(
            "\uFEFFNo.,Name,E-mail,Remarks\r\n1,\"Ana \"\"Annie\"\" Lima\",ana@example.org,\"left-handed; asks, often\"\r\n2,Łukasz Nowak,nowak@example.org,\r\n",
            System.Text.Encoding.UTF8.GetString(list.Content.Span)
        );
    }

    [Theory]
    [InlineData("list.pdf", "It is no list of students")]
    [InlineData("list.xlsx", "cannot be")]
    public async Task A_file_that_is_no_list_is_said_and_nothing_is_kept(string name, string said)
    {
        var request = desk.Request("class/class/roster/file", []);
        var part = new ByteArrayContent("no workbook"u8.ToArray());
        part.Headers.ContentDisposition = new("form-data") { Name = "list", FileNameStar = name };
        request.Content = new MultipartFormDataContent { { new StringContent(desk.Desk.Keys.FormToken), "token" }, part };
        var before = Directory.EnumerateFiles(desk.Folder.Root).ToList();
        Assert.Contains(said, await Answer(request), StringComparison.Ordinal);
        Assert.Equal(before, Directory.EnumerateFiles(desk.Folder.Root));
    }

    private async Task<string> Answer(HttpRequestMessage request)
    {
        using var answer = await desk.Client.SendAsync(request);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }
}
