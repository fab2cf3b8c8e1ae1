using System.Diagnostics;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Input;

/// <summary>
/// No command writes into a folder that holds what it reads, or lies in it, nor into the folder one is in, nor home; each says so and
/// writes nothing.
/// </summary>
public sealed class OutputPlaceTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private readonly HashSet<string> _tried = [];

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_command_keeps_its_inputs_apart_from_its_output()
    {
        var lesson = Checkout.CopyLesson(_folder);
        var (roster, profile) = (Copy(Checkout.Demo.Roster, "people", "roster.csv"), Copy(Checkout.Demo.Class, "class", "class.md"));
        var (dealt, graded, returned) = (_folder.Of("dealt"), _folder.Of("graded"), _folder.Of("returned"));
        ClassKitRun.Of("deal", lesson, "--roster", roster, "--out", dealt).Done();
        Directory.CreateDirectory(returned);
        foreach (var file in Directory.EnumerateFiles(Path.Combine(dealt, "workbooks")).Take(3))
            File.Copy(file, Path.Combine(returned, Path.GetFileName(file)));
        ClassKitRun.Of("grade", dealt, "--returned", returned, "--out", graded).Done();
        var marks = Copy(Path.Combine(Checkout.Demo.Root, "rubrics", "calculation-marks.md"), "marks", "marks.md");

        (string[] Command, string[] Inputs)[] cases =
        [
            (["pack", lesson, "--class", profile, "--out"], [lesson, _folder.Of("rubrics")]),
            (["observe", lesson, "--out"], [lesson, _folder.Of("rubrics")]),
            (["observed", lesson, "--returned", returned, "--out"], [lesson, returned]),
            (["hand-over", lesson, "--out"], [lesson, _folder.Of("rubrics")]),
            (["deal", lesson, "--roster", roster, "--out"], [lesson, _folder.Of("rubrics")]),
            (["practice", lesson, "--roster", roster, "--apart-from", dealt, "--out"], [lesson, dealt]),
            (["rehearse", lesson, "--students", "3", "--out"], [lesson]),
            (["item-bank", lesson, "--out"], [lesson]),
            (["grade", dealt, "--returned", returned, "--out"], [dealt, returned]),
            (["grade", dealt, "--returned", returned, "--pseudonymous", "--out"], [dealt, returned]),
            (["skills", graded, "--out"], [graded]),
            (["difficulty", lesson, "--graded", graded, "--out"], [lesson, graded]),
            (["deal", lesson, "--roster", roster, "--graded", graded, "--out"], [graded]),
            (["paper", dealt, "--out"], [dealt]),
            (["follow-up", dealt, "--graded", graded, "--from", lesson, "--out"], [dealt, graded, lesson]),
            (
                [
                    "grade-exchange",
                    dealt,
                    "--graded",
                    graded,
                    "--class",
                    "a",
                    "--school",
                    "s",
                    "--session",
                    "t",
                    "--category",
                    "c",
                    "--assigned",
                    "2026-11-01",
                    "--due",
                    "2026-11-08",
                    "--scored",
                    "2026-11-10",
                    "--out",
                ],
                [dealt, graded]
            ),
        ];
        var record = Directory.CreateDirectory(_folder.Of("teaching")).FullName;
        ClassKitRun.Of("enter", graded, "--dealt", dealt, "--class", "a", "--record", record, "--by", "Kim").Done();
        var term = Copy(Path.Combine(Checkout.Demo.Root, "demo-cohort", "term", "term.md"), "term", "term.md");
        Refused(
            null,
            "bench",
            Copy(Path.Combine(Checkout.Demo.Root, "rubrics", "bench-work.md"), "bench", "bench-work.md"),
            "--class",
            profile,
            "--roster",
            roster,
            "--out",
            _folder.Of("bench")
        );
        Refused(null, "weigh", term, "--out", _folder.Of("term"));
        Refused(
            null,
            "term-exchange",
            term,
            "--school",
            "s",
            "--course",
            "k",
            "--class",
            "c",
            "--session",
            "t",
            "--begins",
            "2026-09-01",
            "--ends",
            "2026-12-18",
            "--out",
            _folder.Of("term")
        );
        Refused(
            null,
            "compare",
            _folder.Of("bench", "bench-work.md"),
            "--class",
            profile,
            "--roster",
            roster,
            "--first",
            term,
            "--second",
            term,
            "--out",
            _folder.Of("bench")
        );
        var proposals = Copy(Proposals(), "proposed", "misconceptions.md");
        Refused(null, "learn", proposals, Path.Combine(lesson, "exercises", "hydration.md"), "--out", _folder.Of("proposed"));
        Refused(null, "learn", proposals, Path.Combine(lesson, "exercises", "hydration.md"), "--out", lesson);
        // A record is one file: results may lie in its teaching folder, and not in place of it.
        Refused(null, "show", "amara-osei", "--record", record, "--out", record);
        Refused(null, "write-out", record, "--out", record);
        Refused(null, "observed", lesson, "--returned", returned, "--record", record, "--out", record);
        foreach (var (command, inputs) in cases)
        {
            foreach (var input in inputs)
            {
                Refused("which is read", [.. command, Path.Combine(input, "out")]);
                Refused(null, [.. command, input]);
            }
        }
        Refused(null, "deal", lesson, "--roster", roster, "--out", _folder.Of("people"));
        Refused(null, "pack", lesson, "--class", profile, "--out", _folder.Of("class"));
        Refused(
            "lies in it",
            "regrade",
            dealt,
            "--returned",
            Copy(Directory.EnumerateFiles(returned).First(), "graded", "returned", "a.xlsx"),
            "--graded",
            graded,
            "--write"
        );
        Refused(
            "lies in it",
            "regrade",
            dealt,
            "--returned",
            returned,
            "--graded",
            graded,
            "--marking",
            Copy(marks, "graded", "marks.md"),
            "--write"
        );

        // The tour and begin read what ships; a bundle is received only into a folder in which nothing is.
        Assert.Equal(["begin", "receive", "tour"], CommandNames.Writing.Except(_tried).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Corrections_in_the_folder_of_grades_are_read_and_stay()
    {
        var (dealt, graded) = (_folder.Of("dealt"), _folder.Of("graded"));
        ClassKitRun.Of("deal", Checkout.Demo.Lesson, "--roster", Checkout.Demo.Roster, "--out", dealt).Done();
        ClassKitRun.Of("grade", dealt, "--returned", Path.Combine(dealt, "workbooks"), "--out", graded).Done();
        var corrections = Copy(Checkout.Demo.Corrections, "graded", "corrections.csv");
        var before = File.ReadAllBytes(corrections);

        ClassKitRun
            .Of("grade", dealt, "--returned", Path.Combine(dealt, "workbooks"), "--out", graded, "--corrections", corrections)
            .Done();

        Assert.Equal(before, File.ReadAllBytes(corrections));
    }

    [Theory]
    [InlineData(".", "This is the current folder")]
    [InlineData("..", "The current folder lies in it")]
    [InlineData("../..", "The current folder lies in it")]
    [InlineData("/", "root of a disk")]
    [InlineData("../home", "This is the home folder")]
    [InlineData("../links/here", "a link that leads to")]
    [InlineData("../links/nowhere", "a link that leads to")]
    public void A_folder_that_is_somebodys(string folder, string words)
    {
        Directory.CreateDirectory(_folder.Of("home"));
        var here = Directory.CreateDirectory(_folder.Of("here")).FullName;
        Directory.CreateDirectory(_folder.Of("links"));
        Directory.CreateSymbolicLink(_folder.Of("links", "here"), here);
        Directory.CreateSymbolicLink(_folder.Of("links", "nowhere"), _folder.Of("nowhere"));
        var before = Snapshot();
        var start = new ProcessStartInfo(
            "dotnet",
            [typeof(Cli.CommandLine).Assembly.Location, "pack", Checkout.Demo.Lesson, "--out", folder]
        )
        {
            WorkingDirectory = here,
            RedirectStandardError = true,
        };
        start.Environment["HOME"] = _folder.Of("home");

        using var run = Process.Start(start)!;
        var problems = run.StandardError.ReadToEnd();
        run.WaitForExit();

        Assert.Equal(1, run.ExitCode);
        Assert.Contains(words, problems, StringComparison.Ordinal);
        Assert.Contains("Nothing was written.", problems, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", problems, StringComparison.Ordinal);
        Assert.Equal(before, Snapshot());
    }

    private string Proposals()
    {
        var file = _folder.Of("proposals.md");
        File.WriteAllText(file, "## hydration: milk\n### Misconception: added\n\n`=flour+milk_percent`\n\nYou added. Multiply.\n");
        return file;
    }

    private void Refused(string? words, params string[] arguments)
    {
        _tried.Add(arguments[0]);
        var before = Snapshot();

        var run = ClassKitRun.Of(arguments);

        Assert.True(run.ExitCode == 1, $"{string.Join(' ', arguments)}\n{run.Output}\n{run.Problems}");
        if (words is not null)
            Assert.True(run.Problems.Contains(words, StringComparison.Ordinal), $"{string.Join(' ', arguments)}\n{run.Problems}");
        Assert.Contains("Nothing was written.", run.Problems, StringComparison.Ordinal);
        Assert.Equal(before, Snapshot());
    }

    private string Copy(string file, params string[] to)
    {
        var copy = _folder.Of(to);
        Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
        File.Copy(file, copy);
        return copy;
    }

    /// <summary>Everything there is, and when files were written; a folder's own time changes while SQLite looks into a record.</summary>
    private List<string> Snapshot() =>
        [
            .. Directory
                .EnumerateFileSystemEntries(_folder.Path, "*", SearchOption.AllDirectories)
                .Select(path => Directory.Exists(path) ? path : $"{path} {File.GetLastWriteTimeUtc(path):O}")
                .Order(StringComparer.Ordinal),
        ];
}
