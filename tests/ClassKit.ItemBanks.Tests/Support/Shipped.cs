using ClassKit.Content;
using ClassKit.Exercises;

namespace ClassKit.ItemBanks.Tests;

/// <summary>Every exercise that lies under lessons.</summary>
internal static class Shipped
{
    public static IReadOnlyList<Exercise> Exercises { get; } =
        [.. Directory.EnumerateFiles(Path.Combine(Find(AppContext.BaseDirectory), "lessons"), "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Where(path => File.ReadLines(path).Take(20).Any(line => line.StartsWith("skill:", StringComparison.Ordinal)))
            .Select(path => ExerciseReader.Read(path).Model ?? throw new InvalidOperationException($"{path} cannot be read: run classkit check on it."))];

    private static string Find(string folder) => File.Exists(Path.Combine(folder, "ClassKit.sln"))
        ? folder
        : Find(Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(folder)) ?? throw new InvalidOperationException("The tests run outside the repository."));
}
