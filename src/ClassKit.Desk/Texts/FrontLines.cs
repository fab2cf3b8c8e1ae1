namespace ClassKit.Desk.Texts;

/// <summary>Values of the lines at the top of a Markdown file, changed one by one: order, remarks and everything else stay.</summary>
internal static class FrontLines
{
    private const string Fence = "---";

    /// <summary>
    /// The value behind a key as it is typed there; null if the key is not there, or its value runs over more than its line.
    /// </summary>
    public static string? Value(string text, string key) =>
        Find(text.Split('\n'), key) is { } at ? Parts(text.Split('\n')[at], key).Value : null;

    /// <summary>True if a value is not on one line with its key, so that it is changed in the text alone.</summary>
    public static bool IsLong(string text, string key)
    {
        var lines = text.Split('\n');
        return Find(lines, key) is { } at
            && at + 1 < lines.Length
            && (lines[at + 1].StartsWith(' ') || lines[at + 1].StartsWith("- ", StringComparison.Ordinal));
    }

    /// <summary>
    /// The text with another value; the line is put at the end of the top if it was not there, and goes if there is no value.
    /// </summary>
    public static string With(string text, string key, string value)
    {
        var lines = text.Split('\n').ToList();
        if (Find(lines, key) is { } at)
        {
            if (value.Length == 0)
                lines.RemoveAt(at);
            else
                lines[at] = $"{key}: {value}{Parts(lines[at], key).Remark}";
        }
        else if (value.Length > 0 && End(lines) is { } end)
        {
            lines.Insert(end, $"{key}: {value}");
        }
        return string.Join('\n', lines);
    }

    /// <summary>The lines at the top alone, with the fences around them; the whole text if it has none.</summary>
    public static string Top(string text)
    {
        var lines = text.Split('\n');
        return End(lines) is { } end ? string.Join('\n', lines[..(end + 1)]) + "\n" : text;
    }

    /// <summary>The line that closes the top.</summary>
    private static int? End(IReadOnlyList<string> lines)
    {
        if (lines.Count == 0 || lines[0].TrimEnd() != Fence)
            return null;
        for (var at = 1; at < lines.Count; at++)
        {
            if (lines[at].TrimEnd() == Fence)
                return at;
        }
        return null;
    }

    private static int? Find(IReadOnlyList<string> lines, string key)
    {
        for (var at = 1; at < (End(lines) ?? 0); at++)
        {
            if (lines[at].StartsWith(key + ":", StringComparison.Ordinal))
                return at;
        }
        return null;
    }

    /// <summary>Where a value in double quotes ends; 0 for any other. What stands in quotes is no remark.</summary>
    private static int Quoted(string rest)
    {
        var from = rest.Length - rest.TrimStart().Length;
        if (from == rest.Length || rest[from] != '"')
            return 0;
        for (var at = from + 1; at < rest.Length; at++)
        {
            if (rest[at] == '\\')
                at++;
            else if (rest[at] == '"')
                return at;
        }
        return 0;
    }

    /// <summary>A value, and the remark behind it with what stands before that.</summary>
    private static (string Value, string Remark) Parts(string line, string key)
    {
        var rest = line[(key.Length + 1)..];
        var remark = rest.IndexOf(" #", Quoted(rest), StringComparison.Ordinal);
        return remark < 0 ? (rest.Trim(), "") : (rest[..remark].Trim(), rest[rest[..remark].TrimEnd().Length..]);
    }
}
