namespace ClassKit.EndToEnd.Tests.Watching;

/// <summary>A clock that a test moves on by hand.</summary>
internal sealed class HandClock : TimeProvider
{
    private readonly List<HandTimer> _timers = [];

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        var timer = new HandTimer(() => callback(state), dueTime, period);
        _timers.Add(timer);
        return timer;
    }

    public void Advance(TimeSpan by) => _timers.ForEach(timer => timer.Advance(by));

    private sealed class HandTimer(Action ring, TimeSpan due, TimeSpan period) : ITimer
    {
        private TimeSpan? _left = due;

        public void Advance(TimeSpan by)
        {
            _left -= by;
            while (_left <= TimeSpan.Zero)
            {
                _left += period;
                ring();
            }
        }

        public bool Change(TimeSpan dueTime, TimeSpan period) => throw new NotSupportedException();

        public void Dispose() => _left = null;

        public ValueTask DisposeAsync()
        {
            Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
