using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Measured;
using ClassKit.Workbooks.Observations;

namespace ClassKit.LessonPacks.Tests.Observations;

/// <summary>
/// What a team typed into the workbook of the pack is found again, whichever program saved it; the control's numbers are nobody's bread.
/// </summary>
public sealed class ObservationReaderTests
{
    private static readonly ObservationForm Form = new(BuiltPack.DemoPack);

    /// <summary>The same row of every table, the control's among them, gets a number that says in which it stands.</summary>
    private const string Typing = """
        s = w['Observations']
        s['B4'] = 'Team 2'
        n = 0
        for r in range(1, 100):
            if s.cell(r, 1).value == 'Height':
                n += 1
                s.cell(r, 6).value = 50 + n
                s.cell(r, 7).value = '60,5'
            if s.cell(r, 1).value == 'My guess of the height': s.cell(r, 3).value = 40

        """;

    [Fact]
    public void Nothing_typed_is_nothing_measured()
    {
        var reading = ObservationReader.Read(BuiltPack.Demo.Bytes("observations.xlsx"), Form);

        Assert.Equal(Form.Identity, reading.Identity);
        Assert.Empty(reading.Fields);
    }

    [Fact]
    public void Team_guesses_and_heights_of_every_bread_are_found_and_those_of_the_control_are_not()
    {
        var typed = OpenPyXl.Run(BuiltPack.Demo.Bytes("observations.xlsx"), Typing).Saved;
        foreach (var file in (byte[][])[typed, LibreOffice.SaveAgain(typed)])
        {
            var fields = ObservationReader.Read(file, Form).Fields;

            Assert.Equal("Team 2", fields[ObservationForm.Team]);
            Assert.Equal(["51", "52", "53"], Form.Breads.Select(bread => fields[$"{bread.Formula.Id}.height.1"]));
            Assert.All(Form.Breads, bread =>
                Assert.Equal(("60,5", "40"), (fields[$"{bread.Formula.Id}.height.2"], fields[ObservationForm.Guess(bread)]))
            );
            Assert.Equal(1 + (3 * 3), fields.Count);
        }
    }

    [Fact]
    public void Rows_put_in_change_nothing_and_other_files_say_what_they_are()
    {
        Assert.Equal(
            "52",
            ObservationReader
                .Read(OpenPyXl.Run(BuiltPack.Demo.Bytes("observations.xlsx"), Typing + "s.insert_rows(2, 3)").Saved, Form)
                .Fields["popovers.height.1"]
        );
        Assert.Null(ObservationReader.Read(BuiltPack.Demo.Bytes("tasting.xlsx"), Form).Identity);
        Assert.NotNull(ObservationReader.Read([1, 2, 3], Form).Refusal);
        Assert.NotEqual(Form.Identity, ObservationReader.Read(BuiltPack.NoOven.Bytes("observations.xlsx"), Form).Identity);
    }
}
