using System.Collections.Concurrent;

namespace ClassKit.Desk.Jobs;

/// <summary>Long work, one piece after the other.</summary>
/// <param name="ours">Told of mistakes of ours.</param>
internal sealed class JobQueue(Action<Exception> ours) : IDisposable
{
    /// <summary>So many are remembered; the browser of one instructor asks for no more.</summary>
    private const int Remembered = 200;

    private readonly ConcurrentDictionary<int, Job> _jobs = new();
    private readonly Lock _adding = new();
    private Task _last = Task.CompletedTask;
    private int _next;
    private bool _isClosing;

    /// <summary>Those that are not over, the first first.</summary>
    public IReadOnlyList<Job> Open => [.. _jobs.Values.Where(job => job.IsOpen).OrderBy(job => job.Id)];

    /// <summary>The job of an id; null if there is none.</summary>
    public Job? Find(int id) => _jobs.GetValueOrDefault(id);

    /// <summary>Puts one at the end.</summary>
    public Job Add(JobOrder order)
    {
        lock (_adding)
        {
            var job = _jobs[_next + 1] = new(++_next, order);
            foreach (var old in _jobs.Values.Where(old => old.Id <= _next - Remembered && !old.IsOpen))
                _jobs.TryRemove(old.Id, out _);
            if (_isClosing)
                job.Stop();
            _last = _last.ContinueWith(_ => job.Work(ours), CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default);
            return job;
        }
    }

    /// <summary>
    /// Stops all and waits until the last has stopped. Whoever asks about one, or stops one once more, is still answered.
    /// </summary>
    public void Close()
    {
        lock (_adding)
            _isClosing = true;
        foreach (var job in _jobs.Values)
            job.Stop();
        _last.Wait();
    }

    /// <summary>Closes it; nobody may ask any more.</summary>
    public void Dispose()
    {
        Close();
        foreach (var job in _jobs.Values)
            job.Dispose();
    }
}
