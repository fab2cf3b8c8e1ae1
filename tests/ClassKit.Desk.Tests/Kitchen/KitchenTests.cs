using System.Net;
using System.Text.RegularExpressions;
using ClassKit.Desk.Kitchen;
using ClassKit.Desk.Tests.Tools;
using ClassKit.Desk.Texts;

namespace ClassKit.Desk.Tests.Kitchen;

/// <summary>A class's page is written back into the same lines of the same file, or not at all.</summary>
public sealed partial class KitchenTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task One_value_changes_and_every_other_byte_stays()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        Assert.Equal(303, await desk.StatusAsync(await Form(("ovens", "4"))));
        Assert.Equal(before.Replace("ovens: 3\n", "ovens: 4\n", StringComparison.Ordinal), await File.ReadAllTextAsync(file));
        await File.WriteAllTextAsync(file, before);
    }

    [Fact]
    public async Task A_class_is_renamed_in_its_heading_alone()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        Assert.Equal(303, await desk.StatusAsync(await Form(("title", "Wednesday # <b>bakers</b>"))));
        Assert.Equal(
            before.Replace("# Tuesday bakers\n", "# Wednesday # <b>bakers</b>\n", StringComparison.Ordinal),
            await File.ReadAllTextAsync(file)
        );
        Assert.DoesNotContain("<b>bakers", await desk.PageAsync(""), StringComparison.Ordinal);
        await File.WriteAllTextAsync(file, before);
    }

    /// <summary>It gets the kitchen of the first class and its prices where they lie; nobody's allergies.</summary>
    [Fact]
    public async Task Another_class_is_begun_from_the_first_page_and_holds()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        await File.WriteAllTextAsync(
            file,
            FrontLines.With(before, "allergies", "[peanut] # Zeno has his pen in the office") + "\nYolanda sits by the door.\n"
        );
        Assert.Equal(303, await desk.StatusAsync(desk.Request("classes/new", ("name", "Thursday bakers"))));
        var begun = desk.Folder.Classes().Single(known => known.Name == "Thursday bakers");
        try
        {
            var first = desk.Folder.Class("class")!.Profile.Model!;
            var profile = begun.Profile.Model!;
            Assert.Equal(
                (first.Kitchen, first.Ovens, first.PeriodMinutes, 0),
                (profile.Kitchen, profile.Ovens, profile.PeriodMinutes, profile.Allergies.Count)
            );
            Assert.Equal(first.Prices?.Packs.Count, profile.Prices?.Packs.Count);
            Assert.Null(begun.Roster);
            Assert.DoesNotMatch("Zeno|Yolanda", await File.ReadAllTextAsync(begun.File));
            Assert.Matches("Thursday bakers(?s:.*)Say who is in the class", await desk.PageAsync(""));
            foreach (
                var (name, said) in new[]
                {
                    ("thursday BAKERS", "already"),
                    ("", "has no name"),
                    ("rounds", "already"),
                    ("../..", "already"),
                }
            )
            {
                using var answer = await desk.Client.SendAsync(desk.Request("classes/new", ("name", name)));
                Assert.Contains(said, WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync()), StringComparison.Ordinal);
            }
            Assert.Equal(2, desk.Folder.Classes().Count);
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(begun.File)!, recursive: true);
            await File.WriteAllTextAsync(file, before);
        }
    }

    /// <summary>A class whose page names its list is no hindrance to the next, which begins without one.</summary>
    [Fact]
    public async Task Another_class_is_begun_where_the_first_names_its_list()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        await File.WriteAllTextAsync(file, before.Replace("students: 24\n", "roster: roster.csv\n", StringComparison.Ordinal));
        try
        {
            Assert.Equal(303, await desk.StatusAsync(desk.Request("classes/new", ("name", "Evening bakers"))));
            var begun = desk.Folder.Classes().Single(known => known.Name == "Evening bakers");
            Assert.Equal(24, begun.Profile.Model!.Students);
            Directory.Delete(Path.GetDirectoryName(begun.File)!, recursive: true);
        }
        finally
        {
            await File.WriteAllTextAsync(file, before);
        }
    }

    [Fact]
    public async Task What_was_changed_by_hand_meanwhile_is_not_written_over()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        var form = await Form(("teams", "5"));
        var byHand = before.Replace("period: 150 min", "period: 140 min", StringComparison.Ordinal);
        await File.WriteAllTextAsync(file, byHand);
        using (var answer = await desk.Client.SendAsync(form))
        {
            // The form shows the file as it is now, so that keeping it again changes nothing that was written by hand; what was typed is
            // named.
            var page = System.Net.WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
            Assert.Contains("changed meanwhile", page, StringComparison.Ordinal);
            Assert.Contains("You had typed: Teams: 5; How long it is: 150 min.", page, StringComparison.Ordinal);
            Assert.Contains("name=\"period\" value=\"140 min\"", page, StringComparison.Ordinal);
            Assert.Contains("name=\"teams\" value=\"6\"", page, StringComparison.Ordinal);
        }
        Assert.Equal(byHand, await File.ReadAllTextAsync(file));
        await File.WriteAllTextAsync(file, before);
    }

    [Fact]
    public async Task What_would_not_hold_is_said_and_not_written()
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        using (var answer = await desk.Client.SendAsync(await Form(("teams", "99"))))
            Assert.Contains("99 teams for 24 students", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using (var answer = await desk.Client.SendAsync(await Form(("period", "long"))))
        {
            // By the label that stands on the page, without the file's key and line.
            var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
            Assert.Contains("“How long it is”", page, StringComparison.Ordinal);
            Assert.DoesNotContain("class.md, line", page, StringComparison.Ordinal);
        }
        Assert.Equal(before, await File.ReadAllTextAsync(file));
    }

    /// <summary>
    /// Nobody types brackets, quotes, or a unit that is there already. The zone is that of the IANA database, quotes are those of YAML
    /// 1.2.2, 7.3.1.
    /// </summary>
    [Theory]
    [InlineData("allergies", "[sesame]", "sesame, tree nuts", "[sesame, tree nuts]")]
    [InlineData("allergies", "[sesame]", "", "[]")]
    [InlineData("equipment", null, "6 burners", "[6 burners]")]
    [InlineData("period", "150 min", "160", "160 min")]
    [InlineData("period", "150 min", "2 h 45 min", "165 min")]
    [InlineData("period", "150 min", "2 hours", "120 min")]
    [InlineData("altitude", null, "600 feet", "600 ft")]
    [InlineData("scale", "1 g", "0.5 grams", "0.5 g")]
    [InlineData("kitchen temperature", "72 °F", "75,5", "75.5 °F")]
    [InlineData("kitchen temperature", "72 °F", "22 °C", "22 °C")]
    [InlineData("altitude", null, "160", "160 m")]
    [InlineData("time zone", null, "Paris", "Europe/Paris")]
    [InlineData("time zone", null, "new york", "America/New_York")]
    [InlineData("kitchen", "A", "Kitchen #4: \"upstairs\"", "\"Kitchen #4: \\\"upstairs\\\"\"")]
    [InlineData("kitchen", "\"Kitchen #4: x\"", "Kitchen #4: x", "\"Kitchen #4: x\"")]
    [InlineData("kitchen", "A", "Plain", "Plain")]
    public void What_is_typed_is_put_as_the_file_has_it(string key, string? before, string typed, string expected)
    {
        var field = ProfileField.Topics.SelectMany(topic => topic.Fields).Single(one => one.Key == key);
        var inFile = ProfileValue.InFile(field, typed, before);
        Assert.Equal(expected, inFile);
        Assert.Equal(inFile, FrontLines.Value(FrontLines.With("---\nteams: 1\n---\n", key, inFile), key) ?? "");
    }

    /// <summary>A bare number is one of the scale that the same form chooses; 72 °C is no kitchen.</summary>
    [Theory]
    [InlineData("us", "72", "72 °F")]
    [InlineData("metric", "21", "21 °C")]
    [InlineData("us", "21 °C", "21 °C")]
    public async Task A_number_of_degrees_takes_the_scale_that_is_chosen_with_it(string units, string typed, string kept)
    {
        var file = Path.Combine(desk.Folder.Root, "class.md");
        var before = await File.ReadAllTextAsync(file);
        Assert.Equal(303, await desk.StatusAsync(await Form(("units", units), ("kitchen-temperature", typed))));
        var now = await File.ReadAllTextAsync(file);
        await File.WriteAllTextAsync(file, before);
        Assert.Equal(kept, FrontLines.Value(now, "kitchen temperature"));
    }

    [Theory]
    [InlineData(
        "---\n# Why\nteams: 4  # four benches\nunits: us\n---\n# A\n",
        "---\n# Why\nteams: 5  # four benches\nunits: us\n---\n# A\n",
        "teams",
        "5"
    )]
    [InlineData("---\nteams: 4\n---\nteams: stay\n", "---\n---\nteams: stay\n", "teams", "")]
    [InlineData("---\nteams: 4\n---\n", "---\nteams: 4\npaper: A4\n---\n", "paper", "A4")]
    [InlineData("no top\nteams: 4\n", "no top\nteams: 4\n", "teams", "5")]
    [InlineData("---\nsmall scale: 1 g\nscale: 2 g\n---\n", "---\nsmall scale: 1 g\nscale: 5 g\n---\n", "scale", "5 g")]
    public void A_line_at_the_top_changes_alone(string text, string expected, string key, string value) =>
        Assert.Equal(expected, FrontLines.With(text, key, value));

    /// <summary>The form as the page shows it, with some fields typed anew.</summary>
    private async Task<HttpRequestMessage> Form(params (string Name, string Value)[] typed)
    {
        var page = await desk.PageAsync("class/class");
        var fields = Inputs()
            .Matches(page)
            .Select(match => (Name: match.Groups["name"].Value, Value: System.Net.WebUtility.HtmlDecode(match.Groups["value"].Value)))
            .Where(field => field.Name != "token" && typed.All(one => one.Name != field.Name));
        return desk.Request("class/class", [.. fields, .. typed]);
    }

    [GeneratedRegex("""<input [^>]*name="(?<name>[^"]*)"(?: value="(?<value>[^"]*)")?""")]
    private static partial Regex Inputs();
}
