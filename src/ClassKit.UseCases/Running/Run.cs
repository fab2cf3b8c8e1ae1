using System.Runtime.ExceptionServices;
using ClassKit.Exercises.Draws;

namespace ClassKit.UseCases.Running;

/// <summary>One run of a use case: how it is watched and how it is stopped.</summary>
/// <remarks>There is no clock among it: no use case needs to know what time it is.</remarks>
/// <param name="watcher">Told of every step, from any thread and one at a time; null for nobody.</param>
/// <param name="cancellation">Ends the run with an <see cref="OperationCanceledException"/>, before anything of its result is in
/// place.</param>
public sealed class Run(IProgress<RunProgress>? watcher = null, CancellationToken cancellation = default)
{
    private readonly Lock _telling = new();

    /// <summary>Watched by nobody, and never stopped.</summary>
    public static Run Unwatched { get; } = new();

    /// <summary>For what can be stopped by itself.</summary>
    public CancellationToken Cancellation => cancellation;

    /// <summary>Begins a step.</summary>
    /// <param name="step">Which.</param>
    /// <param name="total">How much there is to do; null if it is not known.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    internal StepCount Begin(RunStep step, int? total = null)
    {
        Tell(new(step, 0, total));
        return new(this, step, total);
    }

    /// <summary>Hands out items one by one; what is handed out before the next one is asked for counts as done.</summary>
    internal IEnumerable<T> Each<T>(RunStep step, IReadOnlyCollection<T> items)
    {
        var count = Begin(step, items.Count);
        foreach (var item in items)
        {
            yield return item;
            count.Next();
        }
    }

    /// <summary>Runs a loop on several processors: what goes wrong in it comes out as it is, and being stopped as being stopped.</summary>
    /// <param name="loop">The loop; no more than its options say may go on at once.</param>
    /// <param name="most">How many at once, and never more than there are processors.</param>
    internal void AtOnce(Action<ParallelOptions> loop, int most = int.MaxValue)
    {
        try
        {
            loop(new() { MaxDegreeOfParallelism = Math.Min(most, Environment.ProcessorCount), CancellationToken = cancellation });
        }
        catch (AggregateException several)
        {
            // More than one thread may be stopped, or find that a disk is full: the first says it for all.
            ExceptionDispatchInfo.Throw(several.InnerExceptions.OrderBy(one => one is OperationCanceledException).First());
        }
    }

    /// <summary>Passes on how far the drawing of variants is.</summary>
    internal IProgress<DrawProgress> Draws() => new DrawWatch(this);

    /// <summary>Tells the watcher, unless the run was stopped.</summary>
    internal void Tell(RunProgress progress)
    {
        cancellation.ThrowIfCancellationRequested();
        if (watcher is null)
            return;
        lock (_telling)
            watcher.Report(progress);
    }
}
