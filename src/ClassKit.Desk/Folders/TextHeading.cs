namespace ClassKit.Desk.Folders;

/// <summary>What a Markdown file calls itself.</summary>
internal static class TextHeading
{
    private const string Fence = "---";

    /// <summary>The first heading; null if there is none. Between the two lines of dashes at the top, what begins so is a remark.</summary>
    /// <param name="text">Read as far as that heading, and no further.</param>
    public static string? Of(TextReader text)
    {
        var (isFirst, isTop) = (true, false);
        while (text.ReadLine() is { } line)
        {
            if (line.TrimEnd() == Fence && (isFirst || isTop)) isTop = isFirst;
            else if (!isTop && line.StartsWith("# ", StringComparison.Ordinal)) return line[2..].Trim();
            isFirst = false;
        }
        return null;
    }
}
