namespace ClassKit.House.Tests.Reading;

/// <summary>A line of source.</summary>
/// <param name="File">Its file, below the checkout's root.</param>
/// <param name="Number">Counted from 1.</param>
/// <param name="Text">What it says.</param>
internal sealed record SourceLine(string File, int Number, string Text)
{
    /// <summary>For a message.</summary>
    public string Shown => $"{File}:{Number}: {Text.Trim()}";

    /// <summary>Every line of C# and Razor below a folder of the checkout.</summary>
    public static IEnumerable<SourceLine> Of(string folder) => Of(folder, "*.cs", "*.razor");

    /// <summary>Every line of some kinds of files below a folder of the checkout.</summary>
    public static IEnumerable<SourceLine> Of(string folder, params string[] patterns) =>
        patterns
            .SelectMany(pattern => Directory.EnumerateFiles(Repository.PathOf(folder), pattern, SearchOption.AllDirectories))
            .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'))
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal))
            .SelectMany(file =>
                System.IO.File.ReadLines(Repository.PathOf(file)).Index().Select(line => new SourceLine(file, line.Index + 1, line.Item))
            );
}
