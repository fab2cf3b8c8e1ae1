using System.CommandLine;
using System.Runtime.CompilerServices;
using ClassKit.Cli.Reporting;
using ClassKit.Desk.Opening;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit desk</c></summary>
internal static class DeskCommand
{
    public static Command Create(Report report)
    {
        var folder = new Argument<string?>("FOLDER")
        {
            Description = "Your teaching folder; without one, the first page offers a new one or a look round.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var address = new Option<bool>("--address") { Description = "Only print the address, and open no browser." };
        var command = new Command("desk", "Open the desk: the whole week in your browser, on this machine alone.") { folder, address };
        command.SetAction(parsed => Open(report, parsed.GetValue(folder), !parsed.GetValue(address)));
        return command;
    }

    /// <summary>Apart, so that the server is loaded by this command only.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int Open(Report report, string? folder, bool opensBrowser) =>
        DeskRun
            .OpenAsync(folder, opensBrowser, report.Output, report.Errors, () => RecordOptions.Now, report.Stopping)
            .GetAwaiter()
            .GetResult()
            is { } refused
            ? report.Problems([refused])
            : ExitCode.Done;
}
