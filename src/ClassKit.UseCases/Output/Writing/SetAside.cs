using System.Globalization;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>Names for files of ours that the instructor has changed: they stay beside the new ones.</summary>
internal static class SetAside
{
    private const string Words = "changed by you";

    /// <summary>A name that says so and that nothing has yet, such as <c>gradebook (changed by you).xlsx</c>.</summary>
    public static string NameFor(string root, string path)
    {
        var extension = Path.GetExtension(path);
        var stem = path[..^extension.Length];
        for (var number = 1; ; number++)
        {
            var name =
                number == 1
                    ? $"{stem} ({Words}){extension}"
                    : string.Create(CultureInfo.InvariantCulture, $"{stem} ({Words} {number}){extension}");
            if (Place.At(OwnPath.In(root, name)) == Standing.Nothing)
                return name;
        }
    }

    /// <summary>The names under which a file was set aside, those saved last at the end.</summary>
    public static IEnumerable<string> NamesOf(string root, string path)
    {
        var extension = Path.GetExtension(path);
        var folder = Path.GetDirectoryName(OwnPath.In(root, path))!;
        return Directory
            .EnumerateFiles(folder, $"{Path.GetFileNameWithoutExtension(path)} ({Words}*){extension}")
            .Where(file => Place.At(file) == Standing.File)
            .OrderBy(File.GetLastWriteTimeUtc)
            .ThenBy(file => file, StringComparer.Ordinal)
            .Select(file => Path.GetRelativePath(root, file));
    }
}
