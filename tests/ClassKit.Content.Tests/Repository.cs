namespace ClassKit.Content.Tests;

/// <summary>The content that is shipped, found from wherever the tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    public static string Lesson => Path.Combine(Root, "lessons", "one-tin-three-lifts");

    public static string Demo => Path.Combine(Root, "demo-cohort");

    public static string Rubrics => Path.Combine(Root, "rubrics");

    private static string Find(string folder) => File.Exists(Path.Combine(folder, "ClassKit.sln"))
        ? folder
        : Find(Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(folder)) ?? throw new InvalidOperationException("The tests run outside the repository."));
}
