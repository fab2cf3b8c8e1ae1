using System.Collections.Concurrent;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.NearMisses;

/// <summary>
/// The neighbours of every part of a class's exercises, each found when the first answer asks for it. Can be asked from several threads.
/// </summary>
/// <param name="inputs">The inputs that were drawn for an exercise.</param>
/// <param name="rules">The judge's.</param>
internal sealed class ClassNeighbours(Func<Exercise, IReadOnlyList<Variant>> inputs, JudgeRules rules)
{
    private readonly ConcurrentDictionary<(string Exercise, string Part), Lazy<NeighbourTable>> _tables = new();

    /// <summary>Those of a part.</summary>
    public NeighbourTable Of(Exercise exercise, Part part) =>
        _tables.GetOrAdd((exercise.Id, part.Id), _ => new(() => new(exercise, part, inputs(exercise), rules))).Value;
}
