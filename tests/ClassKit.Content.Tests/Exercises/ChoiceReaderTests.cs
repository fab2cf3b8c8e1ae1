using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Tests.Exercises;

public sealed class ChoiceReaderTests : IDisposable
{
    private const string Text = """
        ---
        skill: hydration
        level: guided
        minutes: 5
        source: common practice, no source
        ---

        # Wet or dry

        A dough of {flour} of flour and {water} of water.

        ## Given

        | Name | What it is | Unit | Values |
        |---|---|---|---|
        | flour | Flour | g | 500 to 900 by 10 |
        | water | Water | g | 300 to 700 by 10 |

        ## Step: share

        Water for the flour

        - Key: `=water/flour`
        - Unit: %

        ## Constraints

        - `=ABS(water/flour-0.7)>0.01`

        ## Part: kind

        What is it?

        - Key: `=IF(share>0.7,wet,dry)`
        - Points: 1

        ### Options

        - **wet.** A wet dough.
        - **dry.** A dry dough.
        - **neither.** Neither of them.

        ### Why

        Divide the water by the flour.

        ### Misconception: turned

        `=IF(share>0.7,dry,wet)`

        It is the other way round.

        ### Misconception: unsure

        `=neither`

        It is one of the two.

        """;

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private Reading<Exercise> Read(string text) => ExerciseReader.Read(_folder.Write("wet_or_dry.md", text));

    [Fact]
    public void A_key_over_options_is_kept_as_written_and_gives_an_options_number()
    {
        var part = Read(Text).Model!.Parts[0];

        Assert.Equal(["wet", "dry", "neither"], part.Choice!.From.Options.Select(option => option.Id));
        Assert.Equal(
            (ChoiceKind.Choose, "kind", "Divide the water by the flour."),
            (part.Choice.From.Kind, part.Choice.From.Id, part.Choice.Why)
        );
        Assert.Equal("=IF(share>0.7,wet,dry)", part.Written!.Text);
        Assert.Equal(["water", "flour"], part.Key.Names);
        Assert.False(part.FormulaAsked);
    }

    [Theory]
    [InlineData("=IF(share>0.7,wet,dry)", "=IF(share>0.7,moist,dry)", "moist")]
    [InlineData("- **neither.** Neither of them.", "- **dry.** Neither of them.", "has an option `dry`")]
    [InlineData("- **neither.** Neither of them.", "- **neither.** A DRY dough", "reads like `dry`")]
    [InlineData("- **neither.** Neither of them.", "- Neither of them.", "Begin it with a name in bold")]
    [InlineData("- **neither.** Neither of them.", "- **flour.** Neither of them.", "is called as a given")]
    [InlineData("### Why\n\nDivide the water by the flour.", "", "no section `### Why`")]
    [InlineData("- Points: 1", "- Points: 1\n- Unit: g", "`Unit` is not known here")]
    [InlineData("- Points: 1", "- Points: 1\n- Options: causes", "Keep one of them")]
    [InlineData("`=neither`", "`=IF(share>0.7,wet,dry)`", "picks the right option")]
    public void What_is_wrong_is_named_with_its_line(string sound, string broken, string words)
    {
        var problems = Read(Complaint.Break(Text.ReplaceLineEndings("\n"), sound, broken)).Problems;

        Assert.Contains(problems, problem => (problem.Found + " " + problem.Expected).Contains(words, StringComparison.Ordinal));
        Assert.All(problems, problem =>
            Assert.True(problem.Line > 0 || problem.Found.StartsWith("There is no section", StringComparison.Ordinal), problem.Found)
        );
    }

    [Theory]
    [InlineData("wet", true)]
    [InlineData("dry", false)]
    public void Every_step_of_an_order_has_one_place(string second, bool isTaken)
    {
        static string Part(string name, string step) =>
            $"\n## Part: {name}\n\nWhich?\n\n- Options: steps\n- Key: `={step}`\n- Points: 1\n\n### Why\n\nSo it is.\n";
        const string Order = "\n## Order: steps\n\n- **wet.** Wet it.\n- **dry.** Dry it.\n";
        var text = Text.ReplaceLineEndings("\n");

        var problems = Read(
            text[..text.IndexOf("## Part: kind", StringComparison.Ordinal)] + Order + Part("first", "wet") + Part("last", second)
        ).Problems;

        Assert.Equal(isTaken, problems.Any(problem => problem.Found.Contains("The key is `wet`, as in line", StringComparison.Ordinal)));
    }

    [Fact]
    public void No_formula_can_use_what_is_answered_with_a_letter()
    {
        const string Later =
            "\n## Part: more\n\nHow much?\n\n- Key: `=kind*flour`\n- Unit: g\n- Tolerance: 1 g\n- Points: 1\n- Answer with: formula\n";

        Assert.Contains("answered with a letter", Read(Text + Later).Problems.Single().Found, StringComparison.Ordinal);
    }
}
