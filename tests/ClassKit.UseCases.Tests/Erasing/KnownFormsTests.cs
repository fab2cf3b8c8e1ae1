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
        Assert.Equal(marks.Places.Where(seen => seen.Key != "ada").Select(seen => (seen.Key, string.Join(' ', seen.Value))), Read(file, left!, Form()).Places.Select(seen => (seen.Key, string.Join(' ', seen.Value))));
        Assert.Null(new KnownForms(_folder.Path, before.Students[0]).Without(_folder.Of(file), left!));
    }

    private void List(params string[] students) => _folder.Write("roster.csv", System.Text.Encoding.UTF8.GetBytes("id,name\n" + string.Join('\n', students) + "\n"));

    private BenchForm Form()
    {
        var profile = ClassProfileReader.Read(Library.OfPaths().At(_folder.Of("class.md"))).Model!;
        var rubric = PracticalRubricReader.Read(Library.OfPaths().At("shipped:/rubrics/bench-work.md")).Model!;
        return BenchForms.Of(rubric, profile.Name, Namesakes.ToldApart(RosterReader.Read(Library.OfPaths().At(_folder.Of("roster.csv"))).Model!.Students), profile.Teams);
    }

    /// <summary>Each team another level, and Dan one of his own.</summary>
    private static Dictionary<string, string> Filled(BenchForm form)
    {
        var fields = Enumerable.Range(1, form.Teams).SelectMany(team => form.Scale.Criteria.Select((_, at) => KeyValuePair.Create(BenchForm.OfTeam(team, at), form.Scale.LevelNames[team % form.Scale.LevelNames.Count]))).ToDictionary();
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
                for (var at = 0; at < form.Scale.Criteria.Count; at++) row.Cell(4 + at).SetValue(form.Scale.LevelNames[team % form.Scale.LevelNames.Count]);
            }
            else if (id == "dan") row.Cell(4).SetValue(form.Scale.LevelNames[0]);
        }
        using var stream = new MemoryStream();
        book.SaveAs(stream);
        return stream.ToArray();
    }
}
