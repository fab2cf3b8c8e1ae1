using ClassKit.Cli;
using ClassKit.Cli.Reporting;

namespace ClassKit.EndToEnd.Tests.Terminal;

/// <summary>Lines break between words at a terminal's width, and nowhere else.</summary>
public sealed class FoldedLinesTests
{
    private const int Columns = 80;

    /// <summary>What commands of each kind say: help, a table, working, a sentence, problems.</summary>
    public static TheoryData<string> Said =>
        [
            "--help",
            "grade --help",
            "reckon",
            "reckon ddt",
            "reckon ice flour=4kg",
            "check nowhere",
            "garde",
            "grade --drwas",
            "deal nowhere --out x --seed -1",
        ];

    [Theory]
    [MemberData(nameof(Said))]
    public void In_a_terminal_no_row_is_wider_and_no_word_is_lost(string typed)
    {
        var (piped, shown) = (Text(typed, null), Text(typed, new TerminalWidth(Columns, Columns)));

        Assert.Equal(Words(piped), Words(shown));
        Assert.All(Rows(shown), row => Assert.True(row.Length <= Columns, row));
    }

    [Fact]
    public void In_a_pipe_a_sentence_stays_a_line()
    {
        var piped = Text("check nowhere", null);

        Assert.Contains(Rows(piped), row => row.Length > 40);
        Assert.Equal(piped, Text("check nowhere", new TerminalWidth(null, null)));
        Assert.NotEqual(piped, Text("check nowhere", new TerminalWidth(30, 30)));
    }

    [Fact]
    public void A_path_or_an_address_stays_whole_however_long()
    {
        var path = "/home/instructor/" + new string('a', 100) + "/gradebook.xlsx";

        Assert.Contains(FoldedLine.Of($"Written to a folder: {path} holds it.", 40), row => row.Contains(path, StringComparison.Ordinal));
    }

    [Fact]
    public void A_command_between_backticks_is_not_torn()
    {
        var rows = FoldedLine.Of("Whoever wants to see it asks `classkit check --draws` for it.", 40).ToList();

        Assert.Equal(["Whoever wants to see it asks", "  `classkit check --draws` for it."], rows);
    }

    [Fact]
    public void What_runs_on_stands_under_its_column()
    {
        Assert.Equal(
            ["  dough  The temperature that the", "         dough is to have after", "         mixing"],
            FoldedLine.Of("  dough  The temperature that the dough is to have after mixing", 33)
        );
        Assert.Equal(["  one two", "    three"], FoldedLine.Of("  one two three", 10));
    }

    [Fact]
    public void Marks_on_letters_take_no_column_and_East_Asian_signs_take_two()
    {
        Assert.Single(FoldedLine.Of("Ame\u0301lie Ame\u0301lie", 13));
        Assert.Equal(2, FoldedLine.Of("面包 面包", 8).Count());
    }

    [Fact]
    public void A_line_is_shown_as_soon_as_it_ends_and_its_beginning_when_flushed()
    {
        using var terminal = new StringWriter { NewLine = "\n" };
        using var folded = new FoldedWriter(terminal, 12);

        folded.Write("Open the ");
        Assert.Empty(terminal.ToString());
        folded.WriteLine("desk now");
        Assert.Equal("Open the\n  desk now\n", terminal.ToString());
        folded.Write("at");
        folded.Flush();
        Assert.Equal("Open the\n  desk now\nat", terminal.ToString());
    }

    private static string Text(string typed, TerminalWidth? width)
    {
        using var output = new StringWriter();
        using var problems = new StringWriter();
        CommandLine.Run(typed.Split(' '), output, problems, width: width);
        return output.ToString() + problems;
    }

    /// <summary>The program's own help breaks lines by itself, between words too.</summary>
    private static string[] Words(string text) => text.Split((char[])[' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries);

    private static string[] Rows(string text) => text.Split('\n').Select(row => row.TrimEnd('\r')).ToArray();
}
