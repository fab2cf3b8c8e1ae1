using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Classes;

namespace ClassKit.Desk.Folders;

/// <summary>A class of the folder.</summary>
/// <param name="Key">How addresses call it.</param>
/// <param name="File">Its profile.</param>
/// <param name="Profile">What stands there, or what is wrong with it.</param>
/// <param name="Roster">The list of its students; null if none lies beside the profile.</param>
public sealed record ClassEntry(string Key, string File, Reading<ClassProfile> Profile, string? Roster)
{
    /// <summary>What pages call it.</summary>
    public string Name => Profile.Model?.Name is { Length: > 0 } name ? name : Path.GetFileNameWithoutExtension(File);
}
