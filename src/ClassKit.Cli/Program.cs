using System.Runtime.InteropServices;
using ClassKit.Cli;
using ClassKit.Cli.Reporting;

using var stop = new CancellationTokenSource();

// Pressed a second time it ends the process at once, which loses nothing either.
using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
{
    if (stop.IsCancellationRequested)
        return;
    signal.Cancel = true;
    stop.Cancel();
});

// A download that is double-clicked gets no arguments.
if (args.Length == 0 && AppContext.TryGetSwitch("ClassKit.OpensDesk", out var opensDesk) && opensDesk)
    args = ["desk"];
return CommandLine.Run(
    args,
    Console.Out,
    Console.Error,
    Console.IsErrorRedirected ? null : Console.Error,
    TerminalWidth.OfConsole,
    stop.Token
);
