using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Pictures;

namespace ClassKit.Content.Pictures;

/// <summary>
/// Reads the pictures that authored files name. They come from anywhere, so that a name is no proof: the file must be a PNG or JPEG of a
/// bounded size, below the lesson's own folder.
/// </summary>
internal static class PictureReader
{
    /// <summary>In bytes: what a page can hold several of and still be sent by mail.</summary>
    public const int Most = 2 * 1024 * 1024;

    /// <summary>In pixels, either way: more than paper or screen can show.</summary>
    private const int MostPixels = 6000;

    private const string Smaller = "Save a smaller copy: 1600 pixels wide is enough for any page, and 2 MB are allowed.";

    /// <summary>Every picture of a text, each once; what is wrong with any is noted at its line.</summary>
    /// <param name="markdown">The text, each line where it stands in the file.</param>
    /// <param name="file">The file.</param>
    /// <param name="lesson">The folder that pictures may lie in.</param>
    /// <param name="problems">Gathers what is wrong.</param>
    public static IReadOnlyList<Picture> All(string markdown, Source file, Source lesson, ProblemList problems)
    {
        var pictures = new List<Picture>();
        foreach (var (shows, name, line) in PictureText.In(markdown))
        {
            if (shows.Length == 0)
                problems.Add(
                    line + 1,
                    $"The picture `{name}` has no words",
                    $"Write into the brackets what is to be seen, for whoever cannot see it: `![A scone cut open]({name})`."
                );
            if (!pictures.Exists(known => known.Name == name) && One(new(name, line + 1), "", file, lesson, problems) is { } picture)
                pictures.Add(picture);
        }
        return pictures;
    }

    /// <summary>One picture, or null with the reason noted.</summary>
    public static Picture? One(Located name, string shows, Source file, Source lesson, ProblemList problems)
    {
        if (name.Text.Contains(':', StringComparison.Ordinal) || name.Text.StartsWith("//", StringComparison.Ordinal))
            return Refuse(
                $"The picture `{name.Text}` is not a file of this folder",
                "Save it beside the lesson, and write its file name: pages ask no other computer for anything."
            );
        if (name.Text.Length == 0 || name.Text.Any(char.IsWhiteSpace))
            return Refuse($"The picture is called `{name.Text}`", "Give the file a name without blanks, such as `scone.png`.");
        var picture = file.At(ContentPath.Beside(file.Shown, name.Text));
        if (!IsBelow(picture, lesson))
            return Refuse(
                $"The picture `{name.Text}` lies outside of the lesson's folder",
                "Put it into the folder, so that it goes where the lesson goes."
            );
        if (!picture.IsFile)
            return Refuse(
                $"There is no picture `{name.Text}`",
                Nearby.Files(picture) ?? "Put the picture into the lesson's folder, or check the spelling."
            );
        if (file.Library.Whole(picture.Path, Most) is not { } bytes)
            return Refuse($"The picture `{name.Text}` cannot be opened, or is larger than 2 MB", Smaller);
        if (PictureBytes.Of(bytes) is not var (type, width, height))
            return Refuse($"The picture `{name.Text}` {Fault(bytes)}", "Save it as PNG or JPEG.");
        if (width is < 1 or > MostPixels || height is < 1 or > MostPixels)
            return Refuse($"The picture `{name.Text}` is {width} × {height} pixels", Smaller);
        return new(name.Text, shows, $"data:{type};base64,{Convert.ToBase64String(bytes)}");

        Picture? Refuse(string found, string expected)
        {
            problems.Add(name.Line, found, expected);
            return null;
        }
    }

    private static string Fault(byte[] bytes) =>
        PictureBytes.Begins(bytes) ? "is cut off or damaged"
        : bytes.AsSpan().IndexOf("<svg"u8) >= 0 ? "is a drawing in SVG, which can hold programs and is not taken"
        : "is no PNG or JPEG, whatever it is called";

    private static bool IsBelow(Source file, Source folder)
    {
        var (tree, above) = (file.Library.Tree, folder.Library.Tree.Full(folder.Path).Replace('\\', '/'));
        return above.Length == 0 || tree.Full(file.Path).Replace('\\', '/').StartsWith(above.TrimEnd('/') + "/", StringComparison.Ordinal);
    }
}
