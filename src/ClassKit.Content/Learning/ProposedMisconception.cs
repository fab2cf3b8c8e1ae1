using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Learning;

/// <summary>A misconception that stands ready to be listed in an exercise: a piece of Markdown, as exercises have them.</summary>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Part">The part's id.</param>
/// <param name="Id">The misconception's own id.</param>
/// <param name="Markdown">From its heading on.</param>
/// <param name="Line">Where it stands in its file, counted from 1.</param>
public sealed partial record ProposedMisconception(string Exercise, string Part, string Id, string Markdown, int Line)
{
    /// <summary>
    /// Every one in a file: sections <c>## exercise: part</c> with headings <c>### Misconception: id</c> below them. What stands before the
    /// first heading of a section is a remark.
    /// </summary>
    /// <returns>The pieces in their order, or what is wrong with the file.</returns>
    public static Reading<IReadOnlyList<ProposedMisconception>> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text)
            return problems.Fail<IReadOnlyList<ProposedMisconception>>();
        var found = In(text.ReplaceLineEndings("\n").Split('\n'));
        if (found.Count == 0)
            problems.Add(
                null,
                "There is no misconception in this file",
                "It needs sections such as `## pan_loaf: water`, with `### Misconception: its_name`, its formula and its words below."
            );
        return problems.Finish(() => (IReadOnlyList<ProposedMisconception>)found);
    }

    private static List<ProposedMisconception> In(string[] lines)
    {
        var found = new List<ProposedMisconception>();
        (string Exercise, string Part)? section = null;
        for (var at = 0; at < lines.Length; at++)
        {
            if (Section().Match(lines[at]) is { Success: true } begun)
                section = (begun.Groups[1].Value, begun.Groups[2].Value);
            else if (lines[at].StartsWith("## ", StringComparison.Ordinal))
                section = null;
            if (section is not var (exercise, part) || Heading().Match(lines[at]) is not { Success: true } heading)
                continue;
            var end = Array.FindIndex(lines, at + 1, line =>
                line.StartsWith("## ", StringComparison.Ordinal) || line.StartsWith("### ", StringComparison.Ordinal)
            );
            found.Add(
                new(exercise, part, heading.Groups[1].Value, string.Join('\n', lines[at..(end < 0 ? lines.Length : end)]).Trim(), at + 1)
            );
        }
        return found;
    }

    [GeneratedRegex(@"^## ([a-z0-9_]+): ([a-z0-9_]+)\s*$")]
    private static partial Regex Section();

    [GeneratedRegex(@"^### Misconception: ([a-z0-9_]+)\s*$")]
    private static partial Regex Heading();
}
