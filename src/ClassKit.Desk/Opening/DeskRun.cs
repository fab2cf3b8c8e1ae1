using System.Runtime.InteropServices;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;

namespace ClassKit.Desk.Opening;

/// <summary>Opens a desk and keeps it open until somebody closes it.</summary>
public static class DeskRun
{
    /// <summary>Opens the desk on a folder, and in the browser.</summary>
    /// <param name="folder">The teaching folder; null to let the first page ask. One that is not there is offered to be begun.</param>
    /// <param name="opensBrowser">False only to say the address.</param>
    /// <param name="output">Where it is said where the desk is.</param>
    /// <param name="ours">Where mistakes of ours go.</param>
    /// <param name="now">The clock.</param>
    /// <param name="cancellation">Closes the desk.</param>
    /// <returns>Why it could not be opened; null where it was, and is closed now.</returns>
    public static async Task<Diagnostic?> OpenAsync(
        string? folder,
        bool opensBrowser,
        TextWriter output,
        TextWriter ours,
        Func<DateTimeOffset> now,
        CancellationToken cancellation
    )
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(ours);
        ArgumentNullException.ThrowIfNull(now);
        if (folder is not null && File.Exists(folder))
            return new(folder, null, "It is a file", "Name your teaching folder, or none, and the first page offers a new one.");
        var folders = new FolderHolder
        {
            Missing = folder is null || Directory.Exists(folder) ? null : Path.GetFullPath(Path.TrimEndingDirectorySeparator(folder)),
        };
        if (folder is not null && folders.Missing is null && folders.Open(new(Path.GetFullPath(folder))) is { } refused)
        {
            folders.Dispose();
            return refused;
        }
        if (folders.Missing is { } missing)
            await output.WriteLineAsync($"There is no folder {missing} yet: the first page offers to begin it.");
        await using (
            var desk = await OpenDesk.StartAsync(
                folders,
                new(),
                bug => ours.WriteLine($"A mistake of ours, sorry; the desk stays open. Please report this:\n{bug}"),
                now
            )
        )
        {
            await StayOpen(desk, opensBrowser, folders.Current?.Root, output, cancellation);
        }
        await output.WriteLineAsync("The desk is closed. What was handed out, marked and decided lies in the folder.");
        return null;
    }

    /// <summary>Says where it is, and waits until somebody closes it.</summary>
    private static async Task StayOpen(OpenDesk desk, bool opensBrowser, string? root, TextWriter output, CancellationToken cancellation)
    {
        using var doorway = opensBrowser ? Doorway.Open(desk.Entrance, root) : null;
        var ended = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        using var terminated = PosixSignalRegistration.Create(PosixSignal.SIGTERM, End);
        using var hungUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, End);
        await output.WriteLineAsync(
            doorway is null
                ? "The desk is open. Its address works once, in one browser of this machine:"
                : "The desk opens in your browser. If it does not, this address works once, in one browser of this machine:"
        );
        await output.WriteLineAsync(desk.Entrance);
        await output.WriteLineAsync("Ctrl+C closes the desk; so does the last line of every page.");
        await output.FlushAsync(CancellationToken.None);
        await Task.WhenAny(desk.Closing, ended.Task, Task.Delay(Timeout.Infinite, cancellation));

        // Whoever ends the program from outside ends it as Ctrl+C does: work is stopped whole, and what was borrowed is given back.
        void End(PosixSignalContext signal)
        {
            signal.Cancel = true;
            ended.TrySetResult();
        }
    }
}
