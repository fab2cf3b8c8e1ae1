namespace ClassKit.UseCases.Output.Writing;

/// <summary>
/// Paths of our files within an output folder, with forward slashes. A list or journal on disk may say anything: nothing that leads out of
/// the folder is believed.
/// </summary>
internal static class OwnPath
{
    private const int MostLength = 1000;

    /// <summary>What ClassKit keeps for itself at the top of an output folder begins so.</summary>
    public const string Hidden = ".classkit-";

    /// <summary>True for a path that leads to a place within the folder and to none that is kept for ourselves.</summary>
    public static bool IsSound(string path) =>
        path.Length is > 0 and <= MostLength
        && !path.StartsWith(Hidden, StringComparison.OrdinalIgnoreCase)
        && !path.Any(char.IsControl)
        && !Path.IsPathRooted(path)
        && !(OperatingSystem.IsWindows() && path.AsSpan().ContainsAny('\\', ':'))
        && path.Split('/').All(name => name is not ("" or "." or ".."));

    /// <summary>Where it is.</summary>
    public static string In(string root, string path) => Path.Combine(root, path);

    /// <summary>The folders on the way to it, outermost first.</summary>
    public static IEnumerable<string> Parents(string path)
    {
        for (var slash = path.IndexOf('/', StringComparison.Ordinal); slash > 0; slash = path.IndexOf('/', slash + 1))
            yield return path[..slash];
    }

    /// <summary>The first thing on the way that is there and no folder: a link may lead anywhere.</summary>
    public static string? Obstacle(string root, string path) =>
        Parents(path).FirstOrDefault(parent => Place.At(In(root, parent)) is Standing.File or Standing.Link);
}
