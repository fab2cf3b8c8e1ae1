using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Tests.Lessons;

/// <summary>Which standing caution an authored one is printed in place of, and what is said of one that looks like one and is not.</summary>
public sealed class CautionNotesTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("**Boiling water.** Lids stay on.", "`Boiling water` looks like the standing one `Scalds`", "(in place of: scalds)")]
    [InlineData("**Raw flour.** No tasting of dough.", "`Raw flour` looks like the standing one `Raw flour`", "(in place of: raw flour)")]
    [InlineData("**Raw flour** (in place of: raw flour). No tasting of dough.", "", "")]
    [InlineData("**Levain.** It stands 14 hours; draw the flour in.", "", "")]
    public void What_looks_like_a_standing_caution_is_said_to_whoever_asks_and_no_more(string caution, string note, string advice)
    {
        var reading = Read(caution);

        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        if (note.Length == 0)
        {
            Assert.Empty(reading.Doubts);
            return;
        }
        var told = Assert.Single(reading.Doubts);
        Assert.Equal(Weight.Fine, told.Weight);
        Assert.Contains(note, told.Found, StringComparison.Ordinal);
        Assert.Contains(advice, told.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("**Flour** (in place of: raw flour). No tasting.", "Flour", "No tasting.", new[] { Hazard.RawFlour })]
    [InlineData(
        "**Flour** (In place of: Raw flour, hot oven). No tasting.",
        "Flour",
        "No tasting.",
        new[] { Hazard.RawFlour, Hazard.HotOven }
    )]
    [InlineData("**Flour.** (in place of Hot oven and tins) No tasting.", "Flour", "No tasting.", new[] { Hazard.HotOven })]
    [InlineData("**Flour.** (In sacks.) No tasting.", "Flour", "(In sacks.) No tasting.", new Hazard[0])]
    public void The_brackets_say_what_a_caution_is_printed_in_place_of(string caution, string title, string text, Hazard[] inPlaceOf)
    {
        var read = Read(caution).Model!.Cautions[1];

        Assert.Equal(title, read.Title);
        Assert.Equal(text, read.Text.Written);
        Assert.Equal(inPlaceOf, read.InPlaceOf);
    }

    [Theory]
    [InlineData("**Flour** (in place of: wet floors). No tasting.", "`wet floors`, which is no standing caution")]
    [InlineData("**Flour** (in place of: allergens). No tasting.", "in place of what must be declared")]
    [InlineData("**Flour** (in place: raw flour). No tasting.", "brackets of the caution `Flour` cannot be read")]
    public void A_standing_caution_that_there_is_not_is_asked_for_by_name(string caution, string says)
    {
        var problem = Assert.Single(Read(caution).Problems);

        Assert.Contains(says, problem.Found, StringComparison.Ordinal);
    }

    private Reading<LessonFormula> Read(string caution)
    {
        var begun = File.ReadAllText(Repository.PathOf("src/ClassKit.Content/Starting/lessons/milk-scones/formulas/milk_scones.md"))
            .ReplaceLineEndings("\n")
            // Its own ingredient has a file beside it.
            .Replace("House sprinkle", "Granulated sugar", StringComparison.Ordinal);
        const string Own = "- **Raw flour** (in place of: raw flour). No tasting of dough. Wash everything that it touched.";
        Assert.Contains(Own, begun, StringComparison.Ordinal);
        return LessonFormulaReader.Read(_folder.Write("milk_scones.md", begun.Replace(Own, $"- {caution}", StringComparison.Ordinal)));
    }
}
