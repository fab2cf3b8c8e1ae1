using System.Runtime.CompilerServices;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Variants;

/// <summary>The names of an exercise's givens and parts, once for all its variants.</summary>
internal sealed record ExerciseNames(string[] Givens, string[] Parts)
{
    private static readonly ConditionalWeakTable<Exercise, ExerciseNames> Known = [];

    public static ExerciseNames Of(Exercise exercise) =>
        Known.GetValue(exercise, known => new([.. known.Givens.Select(given => given.Id)], [.. known.Parts.Select(part => part.Id)]));
}
