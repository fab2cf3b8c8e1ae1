using ClassKit.UseCases.Running;

namespace ClassKit.Cli.Reporting;

/// <summary>Lets a user see how far a command is, and stop it.</summary>
/// <param name="Terminal">Where progress is shown; null if nobody looks on.</param>
/// <param name="Cancellation">Stops the command.</param>
internal sealed record Watching(TextWriter? Terminal, CancellationToken Cancellation)
{
    /// <summary>Works while somebody looks on; what was shown of the progress is gone afterwards.</summary>
    public T During<T>(Func<Run, T> work)
    {
#pragma warning disable RS0030 // Only how long a command has been silent: nothing that is made depends on it.
        using var line = Terminal is null ? null : new ProgressLine(Terminal, TimeProvider.System);
#pragma warning restore RS0030
        return work(new(line, Cancellation));
    }
}
