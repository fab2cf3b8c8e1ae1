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
            if (line.TrimEnd() == Fence && (isFirst || isTop))
                isTop = isFirst;
            else if (!isTop && line.StartsWith("# ", StringComparison.Ordinal))
                return line[2..].Trim();
            isFirst = false;
        }
        return null;
    }

    /// <summary>The text with another first heading; it is put at its end where there was none.</summary>
    public static string With(string text, string heading)
    {
        if (Of(new StringReader(text)) is not { } before)
            return $"{text.TrimEnd('\n')}\n\n# {heading}\n";
        var lines = text.Split('\n').ToList();
        var below = lines[0].TrimEnd() == Fence ? lines.FindIndex(1, line => line.TrimEnd() == Fence) + 1 : 0;
        lines[lines.FindIndex(below, line => line.StartsWith("# ", StringComparison.Ordinal) && line[2..].Trim() == before)] =
            "# " + heading;
        return string.Join('\n', lines);
    }
}
