using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Terminal;

/// <summary>Whoever mistypes a command or an option reads what was meant, and nothing that follows from the slip only.</summary>
public sealed class MistypedTests
{
    /// <summary>Every command with a letter doubled, one left out, and two neighbours swapped.</summary>
    [Fact]
    public void Every_command_is_suggested_after_a_slip_of_the_fingers()
    {
        foreach (var command in CommandNames.All)
        {
            var middle = command.Length / 2;
            foreach (
                var typed in new[]
                {
                    command + command[^1],
                    command.Remove(middle, 1),
                    command[..(middle - 1)] + command[middle] + command[middle - 1] + command[(middle + 1)..],
                }
            )
            {
                if (CommandNames.All.Contains(typed))
                    continue;
                var run = ClassKitRun.Of(typed, "some", "--out", "thing");
                Assert.Equal(2, run.ExitCode);
                Assert.StartsWith($"There is no command `{typed}`. Did you mean ", run.Problems, StringComparison.Ordinal);
                Assert.Contains($"`{command}`", run.Problems.Split('\n')[0], StringComparison.Ordinal);
                Assert.Equal(2, run.Problems.TrimEnd().Split('\n').Length);
            }
        }
    }

    [Theory]
    [InlineData("garde", "grade")]
    [InlineData("gradee", "grade")]
    [InlineData("dael", "deal")]
    [InlineData("obs", "observe")]
    public void Words_that_somebody_typed(string typed, string meant) =>
        Assert.Contains($"`{meant}`", ClassKitRun.Of(typed).Problems, StringComparison.Ordinal);

    [Fact]
    public void A_word_that_is_near_nothing_is_named_without_a_guess() =>
        Assert.Equal(
            ["There is no command `xyzzy`.", "See `classkit --help`."],
            ClassKitRun.Of("xyzzy").Problems.TrimEnd().Split(Environment.NewLine)
        );

    [Fact]
    public void Without_a_command_one_is_asked_for()
    {
        var run = ClassKitRun.Of();

        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("Say which command", run.Problems, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistyped_option_is_named_even_where_an_argument_would_take_it()
    {
        Assert.StartsWith(
            "There is no option `--drwas` of `classkit check`. Did you mean `--draws`?",
            ClassKitRun.Of("check", "--drwas").Problems,
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "There is no option `--otu` of `classkit grade`. Did you mean `--out`?",
            ClassKitRun.Of("grade", "dealt", "--otu=x").Problems,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_mistyped_sum_is_suggested() =>
        Assert.Contains("Did you mean `ice`?", ClassKitRun.Of("reckon", "icee").Problems, StringComparison.Ordinal);

    /// <summary>Somebody who works in the folder beside must find it.</summary>
    [Fact]
    public void Where_files_were_written_is_said_from_the_root()
    {
        var folder = "written-" + Guid.NewGuid().ToString("N");
        try
        {
            var run = ClassKitRun.Of("begin", "--out", folder).Done();

            Assert.Contains(Path.GetFullPath(folder), run.Output, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
