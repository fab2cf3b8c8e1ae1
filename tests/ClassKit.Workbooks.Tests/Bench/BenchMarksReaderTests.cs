using ClassKit.Terms.Bench;
using ClassKit.Workbooks.Bench;

namespace ClassKit.Workbooks.Tests.Bench;

/// <summary>Levels typed into the workbook are found, whichever program saved it.</summary>
public sealed class BenchMarksReaderTests
{
    private static readonly BenchForm Form = new(
        "Bench, with a comma",
        new([("Safe", 2), ("Mixing", 1)], [0, 1, 2], ["Not yet", "Secure, mostly", "Excellent"]),
        [
            ["a", "b", "c"],
            ["d", "e", "f"],
        ],
        "Class",
        [new("ada-berg", "Ada Berg"), new("ben-okoye", "=Ben()")],
        2
    );

    private const string Typing = """
        p = w['Bench marks']
        p['B3'] = 'Inés'
        p['D6'] = 'Secure, mostly'
        p['E6'] = 2
        p['F6'] = '=Clean & quick'
        p['D9'] = 'Not yet'
        p['C9'] = 'away'

        """;

    [Fact]
    public void Both_sheets_are_protected_without_a_password_and_their_formulas_are_locked()
    {
        var cells = WrittenCell.Of(BenchMarksWriter.Write(Form));

        Assert.All(cells, cell => Assert.True(cell.IsProtected && !cell.HasPassword, cell.Sheet));
        Assert.All(cells.Where(cell => cell.Formula is not null), cell => Assert.True(cell.IsLocked, $"{cell}"));
        Assert.Equal(2, cells.Select(cell => cell.Sheet).Distinct().Count());
        Assert.Contains(cells, cell => !cell.IsLocked);
    }

    [Fact]
    public void An_empty_form_says_only_who_is_in_which_team()
    {
        var reading = BenchMarksReader.Read(LibreOffice.SaveAgain(BenchMarksWriter.Write(Form)), Form);

        Assert.Equal(Form.Identity, reading.Identity);
        Assert.Equal(["student.ada-berg.team 1", "student.ben-okoye.team 2"], Shown(reading));
        Assert.Empty(BenchFilling.Of(Form, reading.Fields, "x").Gaps);
    }

    [Fact]
    public void Levels_by_name_or_points_differences_teams_and_comments_are_found()
    {
        var typed = OpenPyXl.Run(BenchMarksWriter.Write(Form), Typing.Replace("'=Clean", "'Clean", StringComparison.Ordinal)).Saved;
        foreach (var file in (byte[][])[typed, LibreOffice.SaveAgain(typed)])
        {
            Assert.Equal(
                [
                    "marker Inés",
                    "student.ada-berg.team 1",
                    "student.ben-okoye.0 Not yet",
                    "student.ben-okoye.team away",
                    "team.1.0 Secure, mostly",
                    "team.1.1 2",
                    "team.1.comment Clean & quick",
                ],
                Shown(BenchMarksReader.Read(file, Form))
            );
        }
    }

    [Fact]
    public void Rows_put_in_and_strangers_change_nothing_else()
    {
        var reading = BenchMarksReader.Read(
            OpenPyXl.Run(BenchMarksWriter.Write(Form), Typing + "p['F6'] = None\np.insert_rows(2, 3)\np['B11'] = 'nobody'").Saved,
            Form
        );

        Assert.Equal(["nobody"], reading.Strangers);
        Assert.Equal("Inés", reading.Fields[BenchForm.Marker]);
    }

    [Fact]
    public void What_is_no_such_workbook_says_so()
    {
        Assert.NotNull(BenchMarksReader.Read("%PDF-1.7"u8.ToArray(), Form).Refusal);
        Assert.Null(BenchMarksReader.Read(OpenPyXl.Run(BenchMarksWriter.Write(Form), "w['Bench marks']['C5'] = 'x'").Saved, Form).Identity);
    }

    private static IEnumerable<string> Shown(BenchBookReading reading) =>
        reading.Fields.Select(field => $"{field.Key} {field.Value}").Order(StringComparer.Ordinal);
}
