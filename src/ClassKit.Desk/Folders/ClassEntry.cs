using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Lessons.Classes;

namespace ClassKit.Desk.Folders;

/// <summary>A class of the folder.</summary>
/// <param name="Key">How addresses call it.</param>
/// <param name="File">Its profile.</param>
/// <param name="Profile">What stands there, or what is wrong with it.</param>
/// <param name="Roster">The list of its students; null if none lies beside the profile.</param>
public sealed record ClassEntry(string Key, string File, Reading<ClassProfile> Profile, string? Roster)
{
    /// <summary>True as long as the list is the one that a new folder begins with, whose names are nobody's.</summary>
    public bool HasBegunList
    {
        get
        {
            if (Roster is null || !System.IO.File.Exists(Roster))
                return false;
            using var begun = new StreamReader(Shipped.Tree.Open("starting/roster.csv"));
            return System.IO.File.ReadAllText(Roster).ReplaceLineEndings("\n") == begun.ReadToEnd().ReplaceLineEndings("\n");
        }
    }

    /// <summary>What pages call it.</summary>
    public string Name => Profile.Model?.Name is { Length: > 0 } name ? name : Path.GetFileNameWithoutExtension(File);
}
