using ClassKit.Desk.Folders;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Desk.People;

/// <summary>The files of a teaching folder that name a student, whatever the record says: lists and tables of the instructor's own, what was made for or came from the student alone, and what was made of the whole class.</summary>
/// <param name="Own">Plain files that can be changed on a page.</param>
/// <param name="Alone">Files of the student's alone, by their paths below the folder.</param>
/// <param name="Shared">Others, by their paths below the folder.</param>
public sealed record StillNamed(IReadOnlyList<TextEntry> Own, IReadOnlyList<string> Alone, IReadOnlyList<string> Shared)
{
    /// <summary>Larger files are not looked into, in bytes.</summary>
    private const int MostBytes = 8 << 20;

    private static readonly string[] Plain = [".md", ".csv", ".tsv", ".json", ".html", ".txt"];

    private static readonly EnumerationOptions WithoutLinks = new() { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint };

    /// <summary>How many there are.</summary>
    public int Count => Own.Count + Alone.Count + Shared.Count;

    /// <summary>Looks through a folder. Inside workbooks it is not looked: those of one student bear the id in their name.</summary>
    public static StillNamed In(TeachingFolder folder, Student who)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(who);
        var texts = folder.Texts();
        var (own, alone, shared) = (new List<TextEntry>(), new List<string>(), new List<string>());
        foreach (var file in Directory.EnumerateFiles(folder.Root, "*", WithoutLinks).Order(StringComparer.Ordinal))
        {
            var shown = Path.GetRelativePath(folder.Root, file).Replace('\\', '/');
            if (Path.GetFileName(file).Contains(who.Id, StringComparison.OrdinalIgnoreCase)) alone.Add(shown);
            else if (!Names(file, who)) continue;
            else if (texts.FirstOrDefault(text => text.Path == file) is { } text) own.Add(text);
            else shared.Add(shown);
        }
        return new(own, alone, shared);
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
