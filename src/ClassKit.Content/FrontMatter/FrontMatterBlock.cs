using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.FrontMatter;

/// <summary>
/// Parts a file into the YAML between its two <c>---</c> lines and the Markdown below, without remarks between <c>&lt;!--</c> and
/// <c>--&gt;</c>.
/// </summary>
/// <param name="Yaml">The YAML, each line where it stands in the file.</param>
/// <param name="Markdown">The rest, each line where it stands in the file.</param>
internal sealed partial record FrontMatterBlock(string Yaml, string Markdown)
{
    private const string Fence = "---";

    /// <summary>Both halves, or null with the reason noted; a file that does not begin with <c>---</c> is all Markdown.</summary>
    public static FrontMatterBlock? Split(string text, ProblemList problems)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            problems.Add(null, "The file is empty", "Write it, or name another file.");
            return null;
        }
        var lines = text.Split('\n');
        if (lines[0].TrimEnd() != Fence)
            return new("", WithoutRemarks(text));
        var end = Array.FindIndex(lines, 1, line => line.TrimEnd() == Fence);
        if (end < 0)
        {
            problems.Add(
                1,
                "The lines at the top begin here with `---` and never end",
                "Put another line of `---` below the last of them."
            );
            return null;
        }
        // Blank lines stand in for the other half, so that line numbers hold in both.
        return new(
            "\n" + string.Join('\n', lines[1..end]),
            new string('\n', end + 1) + WithoutRemarks(string.Join('\n', lines[(end + 1)..]))
        );
    }

    /// <summary>Remarks of the author's, which nobody else sees, are left out; their lines stay empty, so that line numbers hold.</summary>
    private static string WithoutRemarks(string markdown) =>
        Remark().Replace(markdown, remark => new string('\n', remark.Value.AsSpan().Count('\n')));

    [GeneratedRegex("<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex Remark();
}
