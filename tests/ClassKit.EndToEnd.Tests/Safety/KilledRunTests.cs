using System.Diagnostics;
using System.Globalization;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.EndToEnd.Tests.Safety;

/// <summary>
/// Grading killed at any moment: the grades there were are intact or the new ones are complete, what is not ours is as it was, and the next
/// run succeeds.
/// </summary>
/// <remarks>CLASSKIT_KILLS sets how many times; the moments are drawn evenly over the time that a whole run takes.</remarks>
public sealed class KilledRunTests(ITestOutputHelper output) : IDisposable
{
    private const int UsualKills = 3;

    private readonly TemporaryFolder _folder = new();

    private string Out => _folder.Of("graded");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_killed_run_leaves_old_grades_or_new_ones_and_never_a_mixture()
    {
        var dealt = _folder.Of("dealt");
        ClassKitRun
            .Of(
                "deal",
                Checkout.Demo.Lesson,
                "--roster",
                Checkout.Demo.Roster,
                "--out",
                dealt,
                "--seed",
                "2026",
                "--class",
                Checkout.Demo.Class
            )
            .Done();
        var (one, other) = (Returned("one", 8), Returned("other", 23));
        var returned = FolderContent.Digests(other);
        var (olds, news, whole) = (Grade(dealt, one), Grade(dealt, other), Time(() => Run(dealt, one).WaitForExit()));
        Assert.NotEqual(olds["grades.json"], news["grades.json"]);

        var kills = int.TryParse(Environment.GetEnvironmentVariable("CLASSKIT_KILLS"), CultureInfo.InvariantCulture, out var asked)
            ? asked
            : UsualKills;
        var random = new Random(9);
        var (left, done) = (0, 0);
        InstructorsThings.Put(Out);
        InstructorsThings.Put(Path.Combine(Out, "feedback"));
        var theirs = InstructorsThings.Snapshot(Out);
        for (var kill = 0; kill < kills; kill++)
        {
            using (var run = Run(dealt, other))
            {
                Thread.Sleep(TimeSpan.FromSeconds(whole.TotalSeconds * 1.05 * random.NextDouble()));
                run.Kill();
                run.WaitForExit();
            }

            // As the next command finds it that reads here.
            Assert.Null(OutputFolder.Settle(Out));
            var found = Digests();
            Assert.Equal(theirs, InstructorsThings.Snapshot(Out));
            Assert.True(
                Same(found, olds) || Same(found, news),
                $"After kill {kill} the folder holds neither the old grades nor the new ones."
            );
            if (Same(found, olds))
                left++;
            else
                done++;

            // The next run succeeds, and nothing of the killed one is left beside it.
            if (Same(found, news) || kill % 10 == 9)
            {
                Assert.Equal(olds, Grade(dealt, one));
                Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.Path, ".graded.*"));
                Assert.False(Directory.Exists(Path.Combine(Out, ".classkit-work")));
            }
        }

        Assert.Equal(returned, FolderContent.Digests(other));
        output.WriteLine($"{kills} kills within {whole.TotalSeconds:0.0} s: {left} left the old grades, {done} the new ones.");
    }

    private static bool Same(SortedDictionary<string, string> one, SortedDictionary<string, string> other) => one.SequenceEqual(other);

    private string Returned(string name, int files)
    {
        var folder = Directory.CreateDirectory(_folder.Of(name)).FullName;
        foreach (var file in Directory.EnumerateFiles(Checkout.Demo.Returned).Order(StringComparer.Ordinal).Take(files))
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        return folder;
    }

    private SortedDictionary<string, string> Grade(string dealt, string returned)
    {
        ClassKitRun.Of("grade", dealt, "--returned", returned, "--out", Out, "--drop").Done();
        return Digests();
    }

    private SortedDictionary<string, string> Digests() =>
        FolderContent.Digests(Out, path => !InstructorsThings.IsOne(path) && !path.StartsWith(".classkit-work", StringComparison.Ordinal));

    private Process Run(string dealt, string returned)
    {
        var start = new ProcessStartInfo(
            "dotnet",
            [typeof(Cli.CommandLine).Assembly.Location, "grade", dealt, "--returned", returned, "--out", Out, "--drop"]
        )
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        var process = Process.Start(start)!;
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }

    private static TimeSpan Time(Action run)
    {
        var watch = Stopwatch.StartNew();
        run();
        return watch.Elapsed;
    }
}
