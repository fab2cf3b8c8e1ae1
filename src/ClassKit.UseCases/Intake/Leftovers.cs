using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.UseCases.Intake;

/// <summary>Files that programs and operating systems leave beside workbooks, and that nobody handed in.</summary>
internal static class Leftovers
{
    /// <summary>What left a file, by its path; null for one that somebody handed in.</summary>
    public static LeftoverKind? Of(string path)
    {
        var name = Path.GetFileName(path);
        if (name.StartsWith("~$", StringComparison.Ordinal) || name.StartsWith(".~lock.", StringComparison.Ordinal))
            return LeftoverKind.LockFile;
        if (path.Split('/').Contains("__MACOSX", StringComparer.OrdinalIgnoreCase) || name.StartsWith("._", StringComparison.Ordinal))
            return LeftoverKind.MacFile;
        return IsOfSystem(name) ? LeftoverKind.SystemFile : null;
    }

    private static bool IsOfSystem(string name) =>
        name.Equals("Thumbs.db", StringComparison.OrdinalIgnoreCase)
        || name.Equals("desktop.ini", StringComparison.OrdinalIgnoreCase)
        || name is ".DS_Store" or ".localized" or ".directory" or ".gitkeep" or ".gitignore"
        || name.StartsWith(".fuse_hidden", StringComparison.Ordinal)
        || name.StartsWith(".nfs", StringComparison.Ordinal)
        || (name.StartsWith('~') && name.EndsWith(".tmp", StringComparison.OrdinalIgnoreCase));
}
