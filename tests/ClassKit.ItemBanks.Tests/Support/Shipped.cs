using ClassKit.Content;
using ClassKit.Exercises;

namespace ClassKit.ItemBanks.Tests;

/// <summary>Every exercise that lies under lessons.</summary>
internal static class Shipped
{
    public static IReadOnlyList<Exercise> Exercises { get; } =
        [.. Directory.EnumerateFiles(Repository.PathOf("lessons"), "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Where(path => File.ReadLines(path).Take(20).Any(line => line.StartsWith("skill:", StringComparison.Ordinal)))
            .Select(path => ExerciseReader.Read(path).Model ?? throw new InvalidOperationException($"{path} cannot be read: run classkit check on it."))];
}
