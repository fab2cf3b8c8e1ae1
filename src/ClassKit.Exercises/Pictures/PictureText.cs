using System.Text.RegularExpressions;

namespace ClassKit.Exercises.Pictures;

/// <summary>Finds pictures in authored text, written as Markdown has them: <c>![What is to be seen](scone.png)</c>.</summary>
public static partial class PictureText
{
    /// <summary>Every picture that a text names, with its words and the line within the text, from 0.</summary>
    public static IEnumerable<(string Shows, string Name, int Line)> In(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Shown()
            .Matches(text)
            .Select(match =>
                (match.Groups["shows"].Value.Trim(), match.Groups["name"].Value.Trim(), text.AsSpan(0, match.Index).Count('\n'))
            );
    }

    /// <summary>The text with the pictures themselves in the place of their names; one that nobody knows stays as it is written.</summary>
    public static string Embed(string text, IReadOnlyList<Picture> pictures)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(pictures);
        return pictures.Count == 0
            ? text
            : Shown()
                .Replace(text, match =>
                    pictures.FirstOrDefault(picture => picture.Name == match.Groups["name"].Value.Trim()) is { } known
                        ? $"![{match.Groups["shows"].Value}]({known.Address})"
                        : match.Value
                );
    }

    [GeneratedRegex(@"!\[(?<shows>[^\]\n]*)\]\((?<name>[^)\n]*)\)")]
    private static partial Regex Shown();
}
