using System.Collections.Concurrent;
using ClassKit.Grading;
using ClassKit.Grading.Intake;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// Reads and judges returned files on all cores. No more files are in memory than there are cores, and what comes out is the same on any
/// number of them.
/// </summary>
internal static class ParallelJudging
{
    /// <summary>Judges everything that came back.</summary>
    public static JudgedFiles Judge(ClassGrader grader, ReturnedFiles returned, Run run)
    {
        var listing = returned.List();
        return Judge(grader, listing.Items, run, listing.Count);
    }

    /// <summary>Judges every file.</summary>
    /// <param name="grader">The grader of the class.</param>
    /// <param name="items">Files that are read as they are asked for, by one thread at a time.</param>
    /// <param name="run">Told of every file; stops between two.</param>
    /// <param name="total">How many files there are; null if that is not known.</param>
    /// <param name="threads">How many at once; as many as there are cores if null.</param>
    public static JudgedFiles Judge(ClassGrader grader, IEnumerable<ReturnedItem> items, Run run, int? total = null, int? threads = null)
    {
        var judged = grader.Begin();
        var count = run.Begin(RunStep.Judging, total);
        run.AtOnce(options => Parallel.ForEach(Partitioner.Create(items, EnumerablePartitionerOptions.NoBuffering), options, item =>
                {
                    judged.Add(ItemJudging.Judge(grader, item));
                    count.Next(item.Path);
                }), threads ?? int.MaxValue);
        return judged;
    }
}
