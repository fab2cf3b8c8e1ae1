using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>Keeps what it is told of a run, and may do something about it.</summary>
internal sealed class Watcher(Action<RunProgress>? also = null) : IProgress<RunProgress>
{
    private readonly List<RunProgress> _seen = [];

    public IReadOnlyList<RunProgress> Seen => _seen;

    public void Report(RunProgress value)
    {
        _seen.Add(value);
        also?.Invoke(value);
    }
}
