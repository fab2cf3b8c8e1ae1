using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Jobs;

/// <summary>A piece of long work: it goes on while nobody looks, and can be looked at and stopped from any page.</summary>
public sealed class Job : IProgress<RunProgress>, IDisposable
{
    /// <summary>As many lines as can be read while they pass.</summary>
    private const int Shown = 10;

    private readonly CancellationTokenSource _stop = new();
    private readonly Lock _changing = new();
    private readonly Queue<string> _lately = [];
    private RunProgress? _progress;
    private JobEnd? _end;
    private JobState _state;

    internal Job(int id, JobOrder order) => (Id, Order) = (id, order);

    /// <summary>How addresses call it.</summary>
    public int Id { get; }

    /// <summary>What is to be done.</summary>
    public JobOrder Order { get; }

    /// <summary>How far it is.</summary>
    public JobState State
    {
        get
        {
            lock (_changing)
                return _state;
        }
    }

    /// <summary>What it is at; null before it says.</summary>
    public RunProgress? Progress
    {
        get
        {
            lock (_changing)
                return _progress;
        }
    }

    /// <summary>What was done lately, by name, the latest last; empty where nothing has a name.</summary>
    public IReadOnlyList<string> Lately
    {
        get
        {
            lock (_changing)
                return [.. _lately];
        }
    }

    /// <summary>What came of it; null as long as nothing has, and where it was stopped.</summary>
    public JobEnd? End
    {
        get
        {
            lock (_changing)
                return _end;
        }
    }

    /// <summary>True as long as something may still come of it.</summary>
    public bool IsOpen => State is JobState.Waiting or JobState.Running;

    /// <inheritdoc/>
    public void Report(RunProgress value)
    {
        lock (_changing)
        {
            _progress = value;
            if (value.What is not { } what)
                return;
            _lately.Enqueue(what);
            if (_lately.Count > Shown)
                _lately.Dequeue();
        }
    }

    /// <summary>Stops it; what was there before stays as it was.</summary>
    public void Stop() => _stop.Cancel();

    /// <inheritdoc/>
    public void Dispose() => _stop.Dispose();

    /// <summary>Does the work, whatever comes of it.</summary>
    internal void Work(Action<Exception> ours)
    {
        var (state, end) = (JobState.Stopped, (JobEnd?)null);
        try
        {
            lock (_changing)
                _state = JobState.Running;
            end = Order.Work(new(this, _stop.Token));
            state = JobState.Done;
        }
        catch (OperationCanceledException) when (_stop.IsCancellationRequested)
        {
            // Nothing came of it, as was asked.
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            (state, end) = (
                JobState.Done,
                JobEnd.Nothing([
                    new(
                        Order.Title,
                        null,
                        $"It could not be read or written: {failure.Message}",
                        "Look whether the folder is there, whether there is room, and whether another program has a file of it open; then try again."
                    ),
                ])
            );
        }
#pragma warning disable CA1031 // One piece of work must not take the desk down: it is said, and the desk stays open.
        catch (Exception bug)
#pragma warning restore CA1031
        {
            state = JobState.Broken;
            Tell(ours, bug);
        }
        finally
        {
            lock (_changing)
                (_state, _end) = (state, end);
        }
    }

    /// <summary>Whoever is told may be gone, as where standard error is closed: the next piece of work has its turn all the same.</summary>
    private static void Tell(Action<Exception> ours, Exception bug)
    {
        try
        {
            ours(bug);
        }
#pragma warning disable CA1031 // There is nobody left to tell that nobody could be told; the job's page still says that it broke.
        catch (Exception)
#pragma warning restore CA1031
        {
            return;
        }
    }
}
