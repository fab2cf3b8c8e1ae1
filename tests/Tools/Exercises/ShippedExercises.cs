using ClassKit.Content.Exercises;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Tests.Exercises;

/// <summary>Exercises that ship, as they lie in the checkout.</summary>
internal static class ShippedExercises
{
    private const int FirstLines = 20;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Exercise> All { get; } = Below(Repository.PathOf("lessons"));

    /// <summary>Those at or below a folder, in the order of their paths.</summary>
    public static IReadOnlyList<Exercise> Below(string folder) =>
        [
            .. Directory
                .EnumerateFiles(folder, "*.md", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .Where(path => File.ReadLines(path).Take(FirstLines).Any(line => line.StartsWith("skill:", StringComparison.Ordinal)))
                .Select(path =>
                    ExerciseReader.Read(path).Model
                    ?? throw new InvalidOperationException($"{path} cannot be read: run classkit check on it.")
                ),
        ];
}
