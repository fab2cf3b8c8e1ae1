using System.Collections.Concurrent;
using ClassKit.Grading;

namespace ClassKit.UseCases;

/// <summary>Reads and judges returned files on all cores. No more files are in memory than there are cores, and what comes out is the same on any number of them.</summary>
internal static class ParallelJudging
{
    /// <summary>Judges every file.</summary>
    /// <param name="grader">The grader of the class.</param>
    /// <param name="items">Files that are read as they are asked for, by one thread at a time.</param>
    public static IReadOnlyCollection<JudgedFile> Judge(ClassGrader grader, IEnumerable<ReturnedItem> items)
    {
        var judged = new ConcurrentBag<JudgedFile>();
        Parallel.ForEach(
            Partitioner.Create(items, EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            item => judged.Add(grader.Judge(FileReading.Read(item))));
        return judged;
    }
}
