namespace ClassKit.Content.Sources;

/// <summary>Paths as messages show them: with forward slashes, and relative where the user's own path was.</summary>
internal static class ContentPath
{
    public static string Shown(string path) => path.Replace('\\', '/');

    /// <summary>
    /// The file that <paramref name="relative"/> means when written in <paramref name="file"/>, without detours through <c>..</c>; what
    /// ships is meant from everywhere.
    /// </summary>
    public static string Beside(string file, string relative)
    {
        if (relative.StartsWith(Shipped.Scheme, StringComparison.Ordinal))
            return relative;
        var full = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(file))!, relative));
        return Shown(Path.IsPathRooted(file) ? full : Path.GetRelativePath(Path.GetFullPath("."), full));
    }
}
