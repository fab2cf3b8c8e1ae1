using ClassKit.Content.Classes;
using ClassKit.Content.Forms;
using ClassKit.Content.Rosters;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Bench;
using ClassKit.UseCases.Erasing;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.UseCases.Touring;
using ClassKit.Workbooks.Bench;

namespace ClassKit.UseCases.Tests.Erasing;

/// <summary>A form is tied to its class list: when a student is taken off that, what the others earned on it can still be read.</summary>
public sealed class KnownFormsTests : IDisposable
{
    private static readonly string Demo = DemoMaterial.Find(AppContext.BaseDirectory)!.Root;

    private readonly TemporaryFolder _folder = new();

    public KnownFormsTests()
    {
        _folder.Write("class.md", File.ReadAllBytes(Path.Combine(Demo, "demo-cohort", "class.md")));
        _folder.Write("prices.md", File.ReadAllBytes(Path.Combine(Demo, "demo-cohort", "prices.md")));
        List("ada,Ada Berg", "ben,Ben Okoye", "cleo,Cleo Marín", "dan,Dan Moss");
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("marks.json")]
    [InlineData("marks.xlsx")]
    public void What_the_others_earned_is_read_as_before(string file)
    {
        var before = Form();
        var bytes = file.EndsWith(".json", StringComparison.Ordinal)
            ? FormFileWriter.Of(new(before.Identity, Filled(before)), "Bench work")
            : Typed(BenchMarksWriter.Write(before), before);
        var marks = Read(file, bytes, before);

        var left = new KnownForms(_folder.Path, before.Students[0]).Without(_folder.Of(file), bytes);
        List("ben,Ben Okoye", "cleo,Cleo Marín", "dan,Dan Moss");

        Assert.Equal(4, marks.Places.Count);
        Assert.Equal(
            marks.Places.Where(seen => seen.Key != "ada").Select(seen => (seen.Key, string.Join(' ', seen.Value))),
            Read(file, left!, Form()).Places.Select(seen => (seen.Key, string.Join(' ', seen.Value)))
        );
        Assert.Null(new KnownForms(_folder.Path, before.Students[0]).Without(_folder.Of(file), left!));
    }

    /// <summary>The list changes after the form was filled in: Ada has left, Eve has come.</summary>
    [Theory]
    [InlineData("marks.json")]
    [InlineData("marks.xlsx")]
    public void A_form_that_names_somebody_who_has_left_is_read_for_the_others(string file)
    {
        var before = Form();
        var bytes = file.EndsWith(".json", StringComparison.Ordinal)
            ? FormFileWriter.Of(
                new(
                    before.Identity,
                    new Dictionary<string, string>([
                        .. before
                            .Students.Index()
                            .Select(one =>
                                KeyValuePair.Create(BenchForm.TeamOfStudent(one.Item), before.TeamName(before.TeamOf(one.Index)))
                            ),
                        .. Filled(before),
                    ])
                ),
                $"{before.Rubric} – {before.Cohort}"
            )
            : Typed(BenchMarksWriter.Write(before), before);
        var marks = Read(file, bytes, before);

        List("ben,Ben Okoye", "cleo,Cleo Marín", "dan,Dan Moss", "eve,Eve Sato");
        var read = BenchFormReader.Read(Library.OfPaths().At(_folder.Of(file)), Form());

        Assert.Empty(read.Problems);
        Assert.Equal(
            marks.Places.Where(seen => seen.Key != "ada").Select(seen => (seen.Key, string.Join(' ', seen.Value))),
            read.Model!.Places.Select(seen => (seen.Key, string.Join(' ', seen.Value)))
        );
        Assert.Equal(
            [
                $"On this form and no longer on the class list: {(file.EndsWith(".json", StringComparison.Ordinal) ? "ada" : "Ada Berg")}",
                "On the class list, and not when this form was made: Eve Sato",
            ],
            read.Doubts.Select(doubt => doubt.Found)
        );

        // Another one who is erased then is taken out of it all the same.
        if (!file.EndsWith(".json", StringComparison.Ordinal))
            return;
        var left = new KnownForms(_folder.Path, new("ben", "Ben Okoye")).Without(_folder.Of(file), bytes);
        List("cleo,Cleo Marín", "dan,Dan Moss", "eve,Eve Sato");
        Assert.Equal(
            marks.Places.Where(seen => seen.Key is "cleo" or "dan").Select(seen => (seen.Key, string.Join(' ', seen.Value))),
            Read(file, left!, Form()).Places.Select(seen => (seen.Key, string.Join(' ', seen.Value)))
        );
    }

    [Fact]
    public void A_form_of_another_class_is_refused_though_its_ids_are_the_same_numbers()
    {
        List([.. Enumerable.Range(1, 6).Select(at => $"{at},First {at}")]);
        var other = Form();
        var page = FormFileWriter.Of(
            new(
                other.Identity,
                other
                    .Students.Index()
                    .ToDictionary(one => BenchForm.TeamOfStudent(one.Item), one => other.TeamName(other.TeamOf(one.Index)))
            ),
            $"{other.Rubric} – Another class"
        );
        List([.. Enumerable.Range(1, 5).Select(at => $"{at},Second {at}")]);

        Assert.NotEmpty(BenchFormReader.Read(Library.OfPaths().At(_folder.Write("marks.json", page)), Form()).Problems);
        Assert.NotEmpty(
            BenchFormReader.Read(Library.OfPaths().At(_folder.Write("marks.xlsx", BenchMarksWriter.Write(other))), Form()).Problems
        );
    }

    private void List(params string[] students) =>
        _folder.Write("roster.csv", System.Text.Encoding.UTF8.GetBytes("id,name\n" + string.Join('\n', students) + "\n"));

    private BenchForm Form()
    {
        var profile = ClassProfileReader.Read(Library.OfPaths().At(_folder.Of("class.md"))).Model!;
        var rubric = PracticalRubricReader.Read(Library.OfPaths().At("shipped:/rubrics/bench-work.md")).Model!;
        return BenchForms.Of(
            rubric,
            profile.Name,
            Namesakes.ToldApart(RosterReader.Read(Library.OfPaths().At(_folder.Of("roster.csv"))).Model!.Students),
            profile.Teams
        );
    }

    /// <summary>Each team another level, and Dan one of his own.</summary>
    private static Dictionary<string, string> Filled(BenchForm form)
    {
        var fields = Enumerable
            .Range(1, form.Teams)
            .SelectMany(team =>
                form.Scale.Criteria.Select(
                    (_, at) => KeyValuePair.Create(BenchForm.OfTeam(team, at), form.Scale.LevelNames[team % form.Scale.LevelNames.Count])
                )
            )
            .ToDictionary();
        fields[BenchForm.OfStudent(form.Students[3], 0)] = form.Scale.LevelNames[0];
        return fields;
    }

    private BenchSheet Read(string file, byte[] bytes, BenchForm form)
    {
        var read = BenchFormReader.Read(Library.OfPaths().At(_folder.Write(file, bytes)), form);
        Assert.Empty(read.Problems);
        return read.Model!;
    }

    /// <summary>The same typed into the workbook.</summary>
    private static byte[] Typed(byte[] workbook, BenchForm form)
    {
        using var book = new ClosedXML.Excel.XLWorkbook(new MemoryStream(workbook));
        var sheet = book.Worksheet(1);
        foreach (var row in sheet.RowsUsed().Skip(1))
        {
            var id = row.Cell(2).GetString();
            if (id.StartsWith("(team ", StringComparison.Ordinal))
            {
                var team = int.Parse(id[6..^1], System.Globalization.CultureInfo.InvariantCulture);
                for (var at = 0; at < form.Scale.Criteria.Count; at++)
                    row.Cell(4 + at).SetValue(form.Scale.LevelNames[team % form.Scale.LevelNames.Count]);
            }
            else if (id == "dan")
                row.Cell(4).SetValue(form.Scale.LevelNames[0]);
        }
        using var stream = new MemoryStream();
        book.SaveAs(stream);
        return stream.ToArray();
    }
}
