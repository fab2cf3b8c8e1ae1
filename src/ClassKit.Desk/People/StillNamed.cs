using ClassKit.Desk.Folders;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Recording;

namespace ClassKit.Desk.People;

/// <summary>The files of a teaching folder that name a student, whatever the record says: lists and tables of the instructor's own, what was made for or came from the student alone, and what was made of the whole class.</summary>
/// <param name="Own">Plain files that can be changed on a page.</param>
/// <param name="Alone">Files of the student's alone, by their paths below the folder.</param>
/// <param name="Shared">Others, by their paths below the folder.</param>
public sealed record StillNamed(IReadOnlyList<TextEntry> Own, IReadOnlyList<string> Alone, IReadOnlyList<string> Shared)
{
    /// <summary>How many there are.</summary>
    public int Count => Own.Count + Alone.Count + Shared.Count;

    /// <summary>Looks through a folder.</summary>
    public static StillNamed In(TeachingFolder folder, Student who)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(who);
        var texts = folder.Texts().ToDictionary(text => text.Path);
        var named = FilesNaming.In(folder.Root, who);
        var (alone, shared) = (named with { Others = [.. named.Others.Where(file => !texts.ContainsKey(file))] }).Below(folder.Root);
        return new([.. named.Others.Where(texts.ContainsKey).Select(file => texts[file])], alone, shared);
    }
}
