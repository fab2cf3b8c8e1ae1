using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.FrontMatter;

/// <summary>Parts a file into the YAML between its two <c>---</c> lines and the Markdown below.</summary>
/// <param name="Yaml">The YAML, each line where it stands in the file.</param>
/// <param name="Markdown">The rest, each line where it stands in the file.</param>
internal sealed record FrontMatterBlock(string Yaml, string Markdown)
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
            return new("", text);
        var end = Array.FindIndex(lines, 1, line => line.TrimEnd() == Fence);
        if (end < 0)
        {
            problems.Add(1, "The lines at the top begin here with `---` and never end", "Put another line of `---` below the last of them.");
            return null;
        }
        // Blank lines stand in for the other half, so that line numbers hold in both.
        return new("\n" + string.Join('\n', lines[1..end]), new string('\n', end + 1) + string.Join('\n', lines[(end + 1)..]));
    }
}
