using System.Collections.Concurrent;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>Makes files in a work folder, several at once; which thread makes which changes nothing in them.</summary>
internal static class Staging
{
    /// <summary>Each file that is being made is in memory.</summary>
    private const int MostAtOnce = 4;

    /// <summary>Makes them.</summary>
    /// <param name="work">Where they wait.</param>
    /// <param name="files">The files; none is read here of those made before it.</param>
    /// <param name="inTurn">True for files that are made of something that only one can read at a time.</param>
    /// <param name="run">Told of every file; stops between two.</param>
    /// <returns>The path of every file, its name in the work folder and its digest, in their order.</returns>
    public static IReadOnlyList<(string Path, string Name, string Digest)> Of(
        WorkFolder work,
        IReadOnlyList<OutputFile> files,
        bool inTurn,
        Run run
    )
    {
        var staged = new (string Path, string Name, string Digest)[files.Count];
        var count = run.Begin(RunStep.MakingFiles, files.Count);
        run.AtOnce(options => Parallel.ForEach(Partitioner.Create(Lanes(files), EnumerablePartitionerOptions.NoBuffering), options, lane =>
                {
                    foreach (var at in lane)
                    {
                        var (name, digest) = work.Stage(files[at].WriteTo);
                        staged[at] = (files[at].Path, name, digest);
                        count.Next();
                    }
                }), inTurn ? 1 : MostAtOnce);
        return staged;
    }

    /// <summary>
    /// The places of files that are made one after another: all that are large together and first, since they take longest; every other
    /// file is alone.
    /// </summary>
    private static IEnumerable<IReadOnlyList<int>> Lanes(IReadOnlyList<OutputFile> files)
    {
        var large = Enumerable.Range(0, files.Count).Where(at => files[at].IsLarge).ToList();
        if (large.Count > 0)
            yield return large;
        for (var at = 0; at < files.Count; at++)
        {
            if (!files[at].IsLarge)
                yield return [at];
        }
    }
}
