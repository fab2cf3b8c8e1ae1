using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Tests.Exercises;

public sealed class DrawingReaderTests : IDisposable
{
    private const string Text = """
        ---
        skill: yeast
        level: guided
        minutes: 5
        source: common practice, no source
        ---

        # How far

        Tub {tub}.

        ## Given

        | Name | What it is | Unit | Values |
        |---|---|---|---|
        | tub | Tub | | 1 to 8 by 1 |

        ## Part: stage

        How far is it?

        - Key: `=IF(tub>4,just_proofed,under_proofed)`
        - Points: 1

        ### Options

        - **under_proofed.** Not yet.
        - **just_proofed.** Now.
        - **late.** Too far.

        ### Drawing: cut dough

        - **under_proofed.** Few bubbles.
        - **just_proofed.** Many bubbles.

        ### Why

        Look at the walls.

        ### Misconception: never

        `=late`

        No.

        """;

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private Reading<Exercise> Read(string text) => ExerciseReader.Read(_folder.Write("how_far.md", text));

    [Fact]
    public void The_state_that_the_key_names_is_seen()
    {
        var choice = Read(Text).Model!.Parts[0].Choice!;

        Assert.Equal(DrawnThing.CutDough, choice.Drawing!.Thing);
        Assert.Equal(
            ["Few bubbles.", "Many bubbles.", null],
            new[] { 1.0, 2, 3 }.Select(value => choice.Drawing.Seen(choice.From, value)?.Words)
        );
    }

    [Theory]
    [InlineData("### Drawing: cut dough", "### Drawing: cut cake", "Nothing called `cut cake` can be drawn")]
    [InlineData("- **just_proofed.** Many bubbles.", "- **well_mixed.** Many bubbles.", "cannot be drawn as `well_mixed`")]
    [InlineData("- **just_proofed.** Many bubbles.", "- **over_proofed.** Many bubbles.", "which is none of the options")]
    [InlineData("- **just_proofed.** Many bubbles.", "", "it is not said what is seen then")]
    public void What_is_wrong_is_named_with_its_line(string sound, string broken, string words)
    {
        var problems = Read(Complaint.Break(Text.ReplaceLineEndings("\n"), sound, broken)).Problems;

        Assert.Contains(problems, problem => problem.Line > 0 && problem.Found.Contains(words, StringComparison.Ordinal));
    }
}
