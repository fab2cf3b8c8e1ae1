using System.Diagnostics;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Watching;

/// <summary>Commands stopped by the user, as a terminal does it when Ctrl+C is pressed.</summary>
public sealed class StoppedTests(TourRun tour) : IDisposable
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
        Assert.Equal(Stopped, Cli.CommandLine.Run(deal, TextWriter.Null, problems, cancellation: stop.Token));

        Assert.StartsWith("Stopped.", problems.ToString(), StringComparison.Ordinal);
        Assert.Equal(before, Files());
    }

    [Fact]
    public async Task Ctrl_C_ends_a_process_with_130_and_leaves_no_folder_behind()
    {
        await Interrupt(["rehearse", Checkout.Demo.Lesson, "--students", "500", "--out", Out]);

        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.Path, "*", new EnumerationOptions { AttributesToSkip = 0 }));
    }

    /// <summary>
    /// Commands that write. All do so in one way, but for one that writes into a folder of grades and one that writes many folders.
    /// </summary>
    public static TheoryData<string> Writing =>
        Trials.All ? ["deal", "pack", "grade", "regrade", "follow-up", "item-bank", "practice", "tour"] : ["deal", "regrade", "tour"];

    [Theory]
    [MemberData(nameof(Writing))]
    public async Task Ctrl_C_ends_any_command_with_130_and_leaves_what_was_there(string command)
    {
        string[] again = Arguments(command, "2");
        if (command is "regrade")
            ClassKitRun.Of(Arguments("grade", "2")).Done();
        else
            ClassKitRun.Of(again).Done();
        var before = Files();
        // It stays when a run is over, and says of the next that it is at work.
        File.Delete(_folder.Of("out", ".classkit-lock"));

        await Interrupt(Arguments(command, "400"));

        Assert.Equal(before, Files());
    }

    private string[] Arguments(string command, string many)
    {
        var demo = Checkout.Demo;
        var (dealt, graded) = (Path.Combine(tour.Folder, "dealt"), Path.Combine(tour.Folder, "graded"));
        return command switch
        {
            "deal" => ["deal", demo.Lesson, "--roster", demo.Roster, "--out", Out],
            "pack" => ["pack", demo.Lesson, "--class", demo.Class, "--out", Out],
            "grade" => ["grade", dealt, "--returned", demo.Returned, "--out", Out],
            "regrade" => ["regrade", dealt, "--returned", demo.Returned, "--graded", Out, "--write"],
            "follow-up" => ["follow-up", dealt, "--graded", graded, "--out", Out],
            "item-bank" => ["item-bank", demo.Lesson, "--variants", many, "--out", Out],
            "practice" => ["practice", demo.Lesson, "--roster", demo.Roster, "--out", Out],
            "tour" => ["tour", "--out", Out],
            _ => throw new ArgumentOutOfRangeException(nameof(command), command, "No such command here."),
        };
    }

    /// <summary>Presses Ctrl+C as soon as a process is at work, and waits for its end.</summary>
    private async Task Interrupt(string[] arguments)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows sends no signals.");
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "classkit"), arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);

        // The folder's lock says that it is at work.
        SpinWait.SpinUntil(() =>
            process.HasExited
            || Directory
                .EnumerateFiles(
                    _folder.Path,
                    ".classkit-lock",
                    new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 }
                )
                .Any()
        );
        using (var kill = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]))
            await kill.WaitForExitAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal(Stopped, process.ExitCode);
        Assert.StartsWith("Stopped.", await errors, StringComparison.Ordinal);
    }

    private SortedDictionary<string, string> Files() => FolderContent.Digests(Out, path => path != ".classkit-lock");
}
