using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Lessons;

/// <summary>Reads a list of links to the lesson's other files: <c>- [Popovers](formulas/popovers.md)</c>.</summary>
internal static partial class LinkList
{
    /// <summary>Each link's words and target, in order; files of the same folder that no link names are noted.</summary>
    public static IReadOnlyList<(Located Title, string Path)> Read(Section? section, string folder, Source file, ProblemList problems)
    {
        var before = problems.Count;
        var links = new List<(Located, string Path)>();
        foreach (var item in Lists.Entries(section, problems).Select(entry => entry.Text))
        {
            var match = Link().Match(item.Text);
            if (match.Success && links.Exists(known => known.Path == ContentPath.Beside(problems.File, match.Groups["path"].Value)))
                problems.Add(item.Line, $"`{match.Groups["path"].Value}` is listed a second time", "Keep one of the links.");
            else if (match.Success)
                links.Add((new(match.Groups["title"].Value, item.Line), ContentPath.Beside(problems.File, match.Groups["path"].Value)));
            else
                problems.Add(
                    item.Line,
                    $"This item reads `{Prose.Excerpt(item.Text)}`",
                    $"Write a link to the file: `- [Title]({folder}/name.md)`."
                );
        }
        // A link that leads nowhere is most likely meant for what is not listed.
        if (section is not null && problems.Count == before && links.TrueForAll(link => file.At(link.Path).IsFile))
            NoteUnlisted(section, folder, file, [.. links.Select(link => link.Path)], problems);
        return links;
    }

    private static void NoteUnlisted(Section section, string folder, Source file, IReadOnlyList<string> listed, ProblemList problems)
    {
        var beside = file.At(ContentPath.Beside(problems.File, folder));
        if (!beside.IsFolder)
            return;
        foreach (var name in file.Library.Tree.Files(beside.Path).Where(name => name.EndsWith(".md", StringComparison.Ordinal)))
        {
            if (!listed.Contains(ContentPath.Beside(problems.File, $"{folder}/{name}")))
                problems.Add(
                    section.Line,
                    $"`{folder}/{name}` is not listed",
                    "Add a link to it where it belongs in the order, or move the file elsewhere."
                );
        }
    }

    [GeneratedRegex(@"^\[(?<title>[^\]]+)\]\((?<path>[^)\s]+)\)$")]
    private static partial Regex Link();
}
