using System.Diagnostics;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Safety;

/// <summary>
/// Several runs at once into one folder: each has written all of its files or says who is writing, and the folder is one run's.
/// </summary>
public sealed class TwoRunsTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Only_whole_outputs_and_no_silent_loss()
    {
        var seeds = new[] { "1", "2", "3" };
        var wholes = seeds
            .Select(seed =>
            {
                ClassKitRun
                    .Of(
                        "practice",
                        Checkout.Demo.Lesson,
                        "--roster",
                        Checkout.Demo.Roster,
                        "--out",
                        _folder.Of("alone" + seed),
                        "--seed",
                        seed
                    )
                    .Done();
                return FolderContent.Digests(_folder.Of("alone" + seed));
            })
            .ToList();

        var runs = seeds
            .Select(seed =>
                Start("practice", Checkout.Demo.Lesson, "--roster", Checkout.Demo.Roster, "--out", _folder.Of("out"), "--seed", seed)
            )
            .ToList();
        var ends = runs.ConvertAll(run => (Problems: run.StandardError.ReadToEnd(), Code: End(run)));

        Assert.Contains(ends, end => end.Code == 0);
        Assert.All(ends.Where(end => end.Code != 0), end =>
            Assert.True(end.Code == 1 && end.Problems.Contains("is writing to this folder", StringComparison.Ordinal), end.Problems)
        );
        Assert.Contains(wholes, whole => whole.SequenceEqual(FolderContent.Digests(_folder.Of("out"))));
        Assert.Equal(4, Directory.EnumerateFileSystemEntries(_folder.Path).Count());
    }

    private static int End(Process run)
    {
        using (run)
        {
            run.WaitForExit();
            return run.ExitCode;
        }
    }

    private static Process Start(params string[] arguments) =>
        Process.Start(
            new ProcessStartInfo("dotnet", [typeof(Cli.CommandLine).Assembly.Location, .. arguments]) { RedirectStandardError = true }
        )!;
}
