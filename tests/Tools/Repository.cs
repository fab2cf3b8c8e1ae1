namespace ClassKit.Tests;

/// <summary>The checkout that the tests run in.</summary>
internal static class Repository
{
    private static readonly Lazy<string> Found = new(Find);

    /// <summary>The folder that holds ClassKit.sln.</summary>
    public static string Root => Found.Value;

    /// <summary>The demo lesson.</summary>
    public static string Lesson => PathOf("lessons", "one-tin-three-lifts");

    /// <summary>The folder of the invented class.</summary>
    public static string Demo => PathOf("demo-cohort");

    /// <summary>The rubrics and marking schemes.</summary>
    public static string Rubrics => PathOf("rubrics");

    /// <summary>A path below the root.</summary>
    public static string PathOf(params ReadOnlySpan<string> parts) => Path.Combine([Root, .. parts]);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "ClassKit.sln")))
                return folder.FullName;
        }
        throw new InvalidOperationException("The tests run inside a checkout.");
    }
}
