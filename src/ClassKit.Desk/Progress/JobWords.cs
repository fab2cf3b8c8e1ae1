using System.Globalization;
using ClassKit.Desk.Jobs;

namespace ClassKit.Desk.Progress;

/// <summary>How far a job is, in words.</summary>
internal static class JobWords
{
    /// <summary>In a sentence.</summary>
    public static string Of(Job job) =>
        job.State switch
        {
            JobState.Waiting => "It waits until what came before it is done.",
            JobState.Running => job.Progress is { } progress ? StepWords.Of(progress) : "It begins.",
            JobState.Done => job.End!.Problems.Count > 0 ? "Nothing was changed." : "Done.",
            JobState.Stopped => "Stopped. What was there before is as it was.",
            JobState.Broken => "A mistake of ours ended it, sorry. What was there before is as it was.",
        };

    /// <summary>For the browser's tab.</summary>
    public static string Tab(Job job) =>
        job.State switch
        {
            JobState.Waiting => "waits",
            JobState.Running => job.Progress is { Total: { } total } progress
                ? string.Create(CultureInfo.InvariantCulture, $"{progress.Done} of {total}")
                : "at work",
            JobState.Done => "done",
            JobState.Stopped => "stopped",
            JobState.Broken => "broken off",
        };
}
