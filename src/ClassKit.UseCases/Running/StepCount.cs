namespace ClassKit.UseCases.Running;

/// <summary>Counts what is done of a step, from any thread.</summary>
internal sealed class StepCount(Run run, RunStep step, int? total)
{
    private int _done;

    /// <summary>One more is done.</summary>
    /// <param name="what">What it was; null where it has no name.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public void Next(string? what = null)
    {
        var done = Interlocked.Increment(ref _done);
        run.Tell(new(step, done, total is { } known ? Math.Max(known, done) : null) { What = what });
    }
}
