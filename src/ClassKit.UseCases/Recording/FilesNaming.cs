using ClassKit.Exercises.Cohorts;

namespace ClassKit.UseCases.Recording;

/// <summary>The files of a teaching folder that name a student, whatever the record says.</summary>
/// <param name="Alone">Files whose name has the student's id: made for them alone, or come from them.</param>
/// <param name="Others">Plain files that name the student in what they hold: lists, tables, pages of the whole class.</param>
public sealed record FilesNaming(IReadOnlyList<string> Alone, IReadOnlyList<string> Others)
{
    /// <summary>Larger files are not looked into, in bytes.</summary>
    private const int MostBytes = 8 << 20;

    private static readonly string[] Plain = [".md", ".csv", ".tsv", ".json", ".html", ".txt"];

    private static readonly EnumerationOptions WithoutLinks = new() { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint };

    /// <summary>Looks through a folder, by full paths. Inside workbooks it is not looked: those of one student bear the id in their name.</summary>
    public static FilesNaming In(string folder, Student who)
    {
        ArgumentNullException.ThrowIfNull(who);
        var files = Directory.EnumerateFiles(folder, "*", WithoutLinks).Order(StringComparer.Ordinal).ToLookup(file => Path.GetFileName(file).Contains(who.Id, StringComparison.OrdinalIgnoreCase));
        return new([.. files[true]], [.. files[false].Where(file => Names(file, who))]);
    }

    /// <summary>The same by their paths below the folder.</summary>
    public FilesNaming Below(string folder)
    {
        IReadOnlyList<string> Shown(IReadOnlyList<string> files) => [.. files.Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))];
        return new(Shown(Alone), Shown(Others));
    }

    private static bool Names(string file, Student who)
    {
        try
        {
            if (!Plain.Contains(Path.GetExtension(file).ToLowerInvariant()) || new FileInfo(file).Length > MostBytes) return false;
            var text = File.ReadAllText(file);
            return new[] { who.Id, who.Name, who.Shown, who.Email }.Any(word => word is { Length: > 0 } && text.Contains(word, StringComparison.OrdinalIgnoreCase));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
