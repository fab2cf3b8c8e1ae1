using ClassKit.Content.Diagnostics;

namespace ClassKit.UseCases.Output;

/// <summary>Files that are for changing go only where nothing is yet: they would replace what was made of them.</summary>
internal static class NewFolder
{
    /// <summary>Why a folder is no place for them; null if it is.</summary>
    public static Diagnostic? Objection(string folder) =>
        Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any(entry => Path.GetFileName(entry)[0] != '.')
            ? new(
                folder,
                null,
                "There is something in this folder already",
                "Name a new one: nothing that you have written is ever replaced here."
            )
            : null;
}
