using ClassKit.Content.Exercises;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Proving;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Checking;

/// <summary>Draws exercises on trial, several at once: a proof needs nothing but its exercise.</summary>
internal static class ProvedExercises
{
    /// <summary>The proofs of those that can be read, in their order.</summary>
    /// <param name="files">The exercises' files, which are read one after the other.</param>
    /// <param name="run">Told of every exercise; stops between two.</param>
    public static IReadOnlyList<ProvedExercise> Of(IEnumerable<Source> files, Run run)
    {
        List<(string Path, PlacedExercise Read)> read =
        [
            .. files.Select(file => (file.Path, ExerciseReader.ReadPlaced(file).Model!)).Where(one => one.Item2 is not null),
        ];
        var proofs = new ProvedExercise[read.Count];
        var count = run.Begin(RunStep.ProvingExercises, read.Count);
        run.AtOnce(options => Parallel.For(0, read.Count, options, at =>
            {
                var (path, (exercise, places)) = read[at];
                proofs[at] = new(path, ExerciseProof.Of(exercise), places);
                count.Next();
            }));
        return proofs;
    }
}
