namespace ClassKit.Desk.Folders;

/// <summary>A plain file of the folder that an instructor may change.</summary>
/// <param name="Key">How addresses call it.</param>
/// <param name="Path">Where it is.</param>
/// <param name="Shown">How pages call it: its path below the folder.</param>
/// <param name="Lesson">The folder of the lesson that it belongs to; null if to none.</param>
public sealed record TextEntry(string Key, string Path, string Shown, string? Lesson)
{
    /// <summary>True for what people read and the program does not, by its name.</summary>
    public bool IsNote => System.IO.Path.GetFileName(Path).Equals("README.md", StringComparison.OrdinalIgnoreCase);
}
