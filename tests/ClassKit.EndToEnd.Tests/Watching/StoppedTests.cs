using System.Diagnostics;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Watching;

/// <summary>Commands stopped by the user, as a terminal does it when Ctrl+C is pressed.</summary>
public sealed class StoppedTests : IDisposable
{
    private const int Stopped = 130;

    private readonly TemporaryFolder _folder = new();

    private string Out => _folder.Of("out");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_command_that_is_stopped_says_so_and_leaves_what_was_there()
    {
        string[] deal = ["deal", Checkout.Demo.Lesson, "--roster", Checkout.Demo.Roster, "--out", Out];
        Assert.Equal(0, ClassKitRun.Of(deal).ExitCode);
        var before = Files();

        using var stop = new CancellationTokenSource();
        stop.Cancel();
        using var problems = new StringWriter();
        Assert.Equal(Stopped, Cli.CommandLine.Run(deal, TextWriter.Null, problems, null, stop.Token));

        Assert.StartsWith("Stopped.", problems.ToString(), StringComparison.Ordinal);
        Assert.Equal(before, Files());
    }

    [Fact]
    public async Task Ctrl_C_ends_a_process_with_130_and_leaves_no_folder_behind()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows sends no signals.");
        var rehearse = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "classkit"), ["rehearse", Checkout.Demo.Lesson, "--students", "500", "--out", Out])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(rehearse)!;
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);

        // The folder's lock says that it is at work.
        SpinWait.SpinUntil(() => process.HasExited || Directory.EnumerateFiles(_folder.Path, ".classkit-lock", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 }).Any());
        using (var kill = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)])) await kill.WaitForExitAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal(Stopped, process.ExitCode);
        Assert.StartsWith("Stopped.", await errors, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.Path, "*", new EnumerationOptions { AttributesToSkip = 0 }));
    }

    private SortedDictionary<string, string> Files() => FolderContent.Digests(Out);
}
