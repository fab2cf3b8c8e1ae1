using ClassKit.Desk.Jobs;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Tests.Jobs;

/// <summary>Long work can be stopped, breaks alone, and leaves the next its turn.</summary>
public sealed class JobTests : IDisposable
{
    private readonly List<Exception> _ours = [];
    private readonly JobQueue _queue;

    public JobTests() => _queue = new(_ours.Add);

    public void Dispose() => _queue.Dispose();

    [Fact]
    public async Task What_is_stopped_ends_and_what_waits_behind_it_is_done()
    {
        using var began = new ManualResetEventSlim();
        var stopped = _queue.Add(
            Order(run =>
            {
                began.Set();
                run.Cancellation.WaitHandle.WaitOne();
                run.Cancellation.ThrowIfCancellationRequested();
                return JobEnd.Well;
            })
        );
        var next = _queue.Add(Order(_ => JobEnd.Well));
        began.Wait(TestContext.Current.CancellationToken);
        Assert.Equal((JobState.Running, JobState.Waiting), (stopped.State, next.State));

        stopped.Stop();
        await Over(next);

        Assert.Equal((JobState.Stopped, null), (stopped.State, stopped.End));
        Assert.Equal(JobState.Done, next.State);
    }

    /// <summary>Pages are answered until the server has gone, and work ends before that.</summary>
    [Fact]
    public void Stop_pressed_while_the_desk_closes_is_no_mistake()
    {
        var job = _queue.Add(
            Order(run =>
            {
                run.Cancellation.WaitHandle.WaitOne();
                run.Cancellation.ThrowIfCancellationRequested();
                return JobEnd.Well;
            })
        );
        _queue.Close();

        job.Stop();
        var late = _queue.Add(Order(_ => JobEnd.Well));
        late.Stop();

        Assert.Equal(JobState.Stopped, job.State);
        Assert.Empty(_ours);
    }

    [Fact]
    public async Task A_mistake_of_ours_is_told_and_takes_nothing_else_down()
    {
        var broken = _queue.Add(Order(_ => throw new InvalidOperationException("ours")));
        var next = _queue.Add(Order(_ => JobEnd.Well));
        await Over(next);
        Assert.Equal((JobState.Broken, JobState.Done), (broken.State, next.State));
        Assert.Equal("ours", Assert.Single(_ours).Message);
    }

    /// <summary>Mistakes are told on standard error, which may be closed.</summary>
    [Fact]
    public async Task A_mistake_that_nobody_can_be_told_is_still_over_and_lets_the_desk_close()
    {
        using var queue = new JobQueue(_ => throw new IOException("standard error is closed"));
        var before = queue.Add(Order(_ => JobEnd.Well));
        var broken = queue.Add(Order(_ => throw new InvalidOperationException("ours")));
        await Over(broken);
        Assert.Equal((JobState.Done, JobState.Broken), (before.State, broken.State));
        queue.Close();
    }

    [Fact]
    public async Task What_was_done_lately_is_named_the_latest_last()
    {
        var job = _queue.Add(Order(_ => JobEnd.Well));
        foreach (var number in Enumerable.Range(1, 30))
            job.Report(new(RunStep.Judging, number, 30) { What = $"{number}.xlsx" });
        await Over(job);
        Assert.Equal("30.xlsx", job.Lately[^1]);
        Assert.Equal(job.Lately, Enumerable.Range(31 - job.Lately.Count, job.Lately.Count).Select(number => $"{number}.xlsx"));
        Assert.InRange(job.Lately.Count, 5, 20);
    }

    private static JobOrder Order(Func<Run, JobEnd> work) => new("Work", "", "Next", work);

    private static async Task Over(Job job)
    {
        while (job.IsOpen)
            await Task.Delay(5);
    }
}
