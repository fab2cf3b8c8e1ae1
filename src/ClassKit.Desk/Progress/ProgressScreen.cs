using System.Globalization;
using System.Text.Json;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Serving;

namespace ClassKit.Desk.Progress;

/// <summary>How far long work is, and what came of it.</summary>
internal static class ProgressScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.Look("jobs/{id}", visit =>
            With(visit, job =>
                job is { State: JobState.Done, Order.GoesOn: true, End: { Problems.Count: 0, Lines.Count: 0 } }
                    ? visit.GoTo(job.Order.Next)
                    : visit.Show<JobPage>((nameof(JobPage.Job), job))
            )
        );
        routes.Look("jobs/{id}/now", visit => With(visit, job => visit.Write(
                    "application/json",
                    JsonSerializer.SerializeToUtf8Bytes(
                        new
                        {
                            isOpen = job.IsOpen,
                            words = JobWords.Of(job),
                            done = job.Progress?.Done,
                            total = job.Progress?.Total,
                            lately = job.Lately,
                            tab = JobWords.Tab(job),
                        }
                    )
                )));
        routes.Take("jobs/{id}/stop", visit => With(visit, job =>
            {
                job.Stop();
                return visit.GoTo($"jobs/{job.Id}");
            }));
    }

    private static Task With(Visit visit, Func<Job, Task> answer) =>
        int.TryParse(visit.Step("id"), NumberStyles.None, CultureInfo.InvariantCulture, out var id) && visit.Desk.Jobs.Find(id) is { } job
            ? answer(job)
            : visit.Nothing();
}
