using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Tests.Exercises;

public sealed class WordsReaderTests : IDisposable
{
    private const string Text = """
        ---
        skill: yeast
        level: guided
        minutes: 5
        source: common practice, no source
        ---

        # Why so slow

        A dough at {dough}.

        ## Given

        | Name | What it is | Unit | Values |
        |---|---|---|---|
        | dough | Dough | °C | 16 to 20 by 1 |

        ## Part: reason

        Why is it slow?

        - Answer with: words
        - Points: 2.5

        ### Look for

        Yeast works slower in the cold.

        """;

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private Reading<Exercise> Read(string text) => ExerciseReader.Read(_folder.Write("why_so_slow.md", text));

    [Fact]
    public void It_has_what_is_looked_for_and_points_and_neither_key_nor_unit()
    {
        var part = Read(Text).Model!.Parts[0];

        Assert.Equal(
            ("Yeast works slower in the cold.", 2.5m, "", false, false),
            (part.InWords!.LookFor, part.Points, part.Unit.Sign, part.FormulaAsked, part.IsNumber)
        );
        Assert.Equal(WordsAsked.NoKey, part.Key);
    }

    [Theory]
    [InlineData("- Answer with: words", "- Answer with: number", "`Answer with` is `number`")]
    [InlineData("- Answer with: words", "- Answer with: words\n- Unit: g", "`Unit` is not known here")]
    [InlineData("- Answer with: words", "- Answer with: words\n- Key: `=dough`", "`Key` is not known here")]
    [InlineData("- Points: 2.5", "", "no line `- Points")]
    [InlineData("Yeast works slower in the cold.", "", "`Look for` is empty")]
    [InlineData("### Look for\n\nYeast works slower in the cold.", "", "not said what is looked for")]
    public void What_is_wrong_is_named_with_its_line(string sound, string broken, string words)
    {
        var problems = Read(Complaint.Break(Text.ReplaceLineEndings("\n"), sound, broken)).Problems;

        Assert.Contains(problems, problem =>
            problem.Line > 0 && (problem.Found + " " + problem.Expected).Contains(words, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void No_formula_can_use_what_is_answered_in_words()
    {
        const string Later =
            "\n## Part: more\n\nHow much?\n\n- Key: `=reason*dough`\n- Unit: g\n- Tolerance: 1 g\n- Points: 1\n- Answer with: formula\n";

        Assert.Contains("answered in words", Read(Text + Later).Problems.Single().Found, StringComparison.Ordinal);
    }
}
