using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;

namespace ClassKit.Content.Tests.Lessons;

/// <summary>What is said of a caution that takes a standing one's place under another name, or that leaves it where it is.</summary>
public sealed class CautionNotesTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("Boiling water", "Lids stay on.", "`Boiling water` is printed in place of the standing one `Scalds`")]
    [InlineData("Holding", "It stands 14 hours.", "`Holding` does not say the rule of the standing one `Holding`")]
    [InlineData("Raw flour", "No tasting of dough.", "")]
    [InlineData("Levain", "It stands 14 hours; draw the flour in.", "")]
    public void It_is_said_to_whoever_asks_and_no_more(string title, string text, string note)
    {
        var begun = File.ReadAllText(Repository.PathOf("src/ClassKit.Content/Starting/lessons/milk-scones/formulas/milk_scones.md"))
            .ReplaceLineEndings("\n")
            // Its own ingredient has a file beside it.
            .Replace("House sprinkle", "Granulated sugar", StringComparison.Ordinal);
        const string Own = "- **Raw flour.** No tasting of dough.";
        Assert.Contains(Own, begun, StringComparison.Ordinal);
        var reading = LessonFormulaReader.Read(
            _folder.Write("milk_scones.md", begun.Replace(Own, $"- **{title}.** {text}", StringComparison.Ordinal))
        );

        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        if (note.Length == 0)
        {
            Assert.Empty(reading.Doubts);
            return;
        }
        var told = Assert.Single(reading.Doubts);
        Assert.Equal(Weight.Fine, told.Weight);
        Assert.Contains(note, told.Found, StringComparison.Ordinal);
    }
}
