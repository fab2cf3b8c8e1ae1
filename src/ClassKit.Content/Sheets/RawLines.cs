namespace ClassKit.Content.Sheets;

/// <summary>The lines of a text with their ends, whichever these are: put together again they are the text.</summary>
internal static class RawLines
{
    public static List<string> Of(string text)
    {
        List<string> lines = [];
        for (var start = 0; start < text.Length; )
        {
            var at = text.AsSpan(start).IndexOfAny('\r', '\n');
            var end =
                at < 0
                    ? text.Length
                    : start + at + (text[start + at] == '\r' && start + at + 1 < text.Length && text[start + at + 1] == '\n' ? 2 : 1);
            lines.Add(text[start..end]);
            start = end;
        }
        return lines;
    }

    /// <summary>A table without some of its records, of which each may run over lines; every other byte stays.</summary>
    /// <param name="text">The table, a mark at its head included.</param>
    /// <param name="records">All its records, as they were read.</param>
    /// <param name="gone">The lines in which those begin that go.</param>
    /// <returns>Null where its lines cannot be told: a rarer end of line counts as one only when the table is read.</returns>
    public static string? Without(string text, IReadOnlyList<CsvRecord> records, IReadOnlySet<int> gone)
    {
        var lines = Of(text);
        if (
            text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Count(letter => letter == '\n')
            != lines.Count(line => line[^1] is '\r' or '\n')
        )
            return null;
        List<int> begins = [.. records.Select(record => record.Line)];
        return string.Concat(lines.Where((_, at) => !gone.Contains(begins[RecordAt(begins, at + 1)])));
    }

    /// <summary>Which record a line belongs to: the last that begins at it or before.</summary>
    private static int RecordAt(List<int> begins, int line)
    {
        var at = begins.BinarySearch(line);
        return at >= 0 ? at : ~at - 1;
    }
}
