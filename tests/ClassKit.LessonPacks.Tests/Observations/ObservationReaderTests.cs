using System.Globalization;
using AngleSharp.Html.Parser;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Measured;
using ClassKit.Pages;
using ClassKit.Pages.Numbers;
using ClassKit.Workbooks.Observations;

namespace ClassKit.LessonPacks.Tests.Observations;

/// <summary>
/// What a team typed into the workbook of the pack is found again, whichever program saved it: every cell that is framed for it, whatever the lesson, the control's among them.
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
    public void Team_guesses_and_heights_of_every_bread_are_found_and_those_of_the_control()
    {
        var typed = OpenPyXl.Run(BuiltPack.Demo.Bytes("observations.xlsx"), Typing).Saved;
        foreach (var file in (byte[][])[typed, LibreOffice.SaveAgain(typed)])
        {
            var fields = ObservationReader.Read(file, Form).Fields;

            Assert.Equal("Team 2", fields[ObservationForm.Team]);
            Assert.Equal(["51", "52", "53", "54"], Form.Breads.Select(bread => fields[$"{bread.Formula.Id}.height.1"]).Order());
            Assert.All(BuiltPack.DemoPack.Comparison.Select(compared => compared.Bread), bread =>
                Assert.Equal(
                    ("60,5", "40"),
                    (fields[$"{bread.Formula.Id}.height.2"], fields[ObservationForm.Field(bread, Measure.GuessedHeight, 1)])
                )
            );
            Assert.Equal(1 + (3 * 3) + 1, fields.Count);
        }
    }

    /// <summary>Whatever is framed to be typed into is read, stands among what the class measured and is drawn; on the page for the bench too.</summary>
    [Theory]
    [InlineData("one-tin-three-lifts", "class.md")]
    [InlineData("thin-air-quick-breads", "mountain-class.md")]
    [InlineData("no-oven-in-the-house", "no-oven-class.md")]
    [InlineData("one-dough-three-clocks", "long-morning-class.md")]
    public void Every_cell_to_type_into_is_read_and_drawn(string lesson, string profile)
    {
        const string TypeEverywhere = """
            n = 100
            for row in w['Observations'].iter_rows():
                for c in row:
                    if c.row > 4 and not c.protection.locked:
                        n += 1
                        c.value = n
            w['Observations']['B4'] = 'Team 2'
            print(n - 100)
            """;
        var pack = BuiltPack.Model(
            LessonReader.Read(Repository.PathOf("lessons", lesson)).Model!,
            ClassProfileReader.Read(Repository.PathOf("demo-cohort", profile)).Model!
        );
        var form = new ObservationForm(pack);
        var (saved, printed) = OpenPyXl.Run(ObservationWriter.Write(pack), TypeEverywhere);
        var typed = Enumerable.Range(101, int.Parse(printed, CultureInfo.InvariantCulture)).Select(number => (double)number).ToList();
        var team = TeamMeasurements.Of(form, ObservationReader.Read(saved, form).Fields, "file");
        var measured = MeasuredClass.Of(pack, [team]);

        Assert.NotEmpty(typed);
        Assert.Equal(
            typed,
            measured
                .Breads.SelectMany(bread => bread.Quantities.Where(quantity => quantity.Asked.Measure != Measure.BakeLoss))
                .SelectMany(quantity => quantity.Points.Select(point => point.Value))
                .Order()
        );
        Assert.All(pack.Cards, card =>
        {
            var mixed = measured
                .Breads.Single(bread => bread.Compared.Bread.Formula.Id == card.Bread.Formula.Id)
                .Quantities.Single(quantity => quantity.Asked.Measure == Measure.MixedTemperature);
            Assert.Equal(mixed.Unit.Of(card.Mix.Mixed.Typical.Celsius), mixed.Expected!.Value.Typical, 9);
        });
        var page = new HtmlParser().ParseDocument(HtmlPages.ObservationForm(form));
        Assert.Equal(
            ObservedField.All(form).Select(field => field.Name).Prepend(ObservationForm.Team),
            page.QuerySelectorAll("[data-field]").Select(field => field.GetAttribute("data-field")!)
        );
        Assert.Equal(typed.Count, ObservedField.All(form).Count);
        var drawn = new HtmlParser().ParseDocument(HtmlPages.ObservedClass(pack, measured, []));
        Assert.Equal(
            typed.Count,
            drawn
                .QuerySelectorAll("section tbody td")
                .SelectMany(cell => cell.TextContent.Split(','))
                .Count(text => typed.Contains(Number(text)))
        );

        static double Number(string text) => double.TryParse(text, CultureInfo.InvariantCulture, out var number) ? number : 0;
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
