using System.Collections.Concurrent;
using ClassKit.Grading;

namespace ClassKit.UseCases;

/// <summary>Reads and judges returned files on all cores. No more files are in memory than there are cores, and what comes out is the same on any number of them.</summary>
internal static class ParallelJudging
{
    /// <summary>Judges every file.</summary>
    /// <param name="grader">The grader of the class.</param>
    /// <param name="items">Files that are read as they are asked for, by one thread at a time.</param>
    /// <param name="threads">How many at once; as many as there are cores if null.</param>
    public static JudgedFiles Judge(ClassGrader grader, IEnumerable<ReturnedItem> items, int? threads = null)
    {
        var judged = grader.Begin();
        Parallel.ForEach(
            Partitioner.Create(items, EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { MaxDegreeOfParallelism = threads ?? Environment.ProcessorCount },
            item => judged.Add(ItemJudging.Judge(grader, item)));
        return judged;
    }
}
