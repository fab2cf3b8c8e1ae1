namespace ClassKit.Cli.Reporting;

/// <summary>Paths as a user wants to read them.</summary>
internal static class DisplayPath
{
    /// <summary>Relative to where the user is, unless that leads upwards.</summary>
    public static string Of(string path)
    {
        try
        {
            var relative = Path.GetRelativePath(Environment.CurrentDirectory, Path.GetFullPath(path));
            return relative.StartsWith("..", StringComparison.Ordinal) ? Path.GetFullPath(path) : relative;
        }
        catch (IOException)
        {
            // Where the user is may be gone; that must not undo what was done.
            return path;
        }
    }

    /// <summary>From the root, for what somebody is to find and open.</summary>
    public static string Whole(string path)
    {
        try
        {
            return Path.GetFullPath(path);
        }
        catch (IOException)
        {
            return path;
        }
    }
}
