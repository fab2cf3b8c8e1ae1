namespace ClassKit.Desk.Texts;

/// <summary>The first table below a heading of a Markdown file, changed row by row; everything else stays.</summary>
internal static class TableLines
{
    /// <summary>The text with a row more, at the end of the table.</summary>
    /// <param name="text">With line feeds alone.</param>
    /// <param name="heading">The heading above the table, such as <c>## Work</c>.</param>
    /// <param name="cells">What stands in the row, by the heading of the column in small letters.</param>
    /// <returns>Null if there is no such table.</returns>
    public static string? WithRow(string text, string heading, IReadOnlyDictionary<string, string> cells)
    {
        var lines = text.Split('\n').ToList();
        if (Find(lines, heading) is not { } table)
            return null;
        lines.Insert(table.End, Row(table.Columns.Select(column => cells.GetValueOrDefault(column, ""))));
        return string.Join('\n', lines);
    }

    /// <summary>The text with another cell.</summary>
    /// <param name="text">With line feeds alone.</param>
    /// <param name="heading">The heading above the table.</param>
    /// <param name="named">What stands in the row's first cell.</param>
    /// <param name="column">The column, in small letters.</param>
    /// <param name="value">What is to stand there.</param>
    /// <returns>Null if there is no such row or column.</returns>
    public static string? WithCell(string text, string heading, string named, string column, string value)
    {
        var lines = text.Split('\n').ToList();
        if (Find(lines, heading) is not { } table || table.Columns.ToList().IndexOf(column) is not (>= 0 and var place))
            return null;
        for (var at = table.Begin; at < table.End; at++)
        {
            var cells = Cells(lines[at]);
            if (cells.Count == 0 || cells[0] != named)
                continue;
            while (cells.Count <= place)
                cells.Add("");
            cells[place] = value;
            lines[at] = Row(cells);
            return string.Join('\n', lines);
        }
        return null;
    }

    /// <summary>The text without a row.</summary>
    /// <param name="text">With line feeds alone.</param>
    /// <param name="heading">The heading above the table.</param>
    /// <param name="named">What stands in the row's first cell.</param>
    /// <returns>Null if there is no such row.</returns>
    public static string? WithoutRow(string text, string heading, string named)
    {
        var lines = text.Split('\n').ToList();
        if (Find(lines, heading) is not { } table)
            return null;
        for (var at = table.Begin; at < table.End; at++)
        {
            if (Cells(lines[at]) is not [var first, ..] || first != named)
                continue;
            lines.RemoveAt(at);
            return string.Join('\n', lines);
        }
        return null;
    }

    private static (IReadOnlyList<string> Columns, int Begin, int End)? Find(List<string> lines, string heading)
    {
        var head = lines.FindIndex(Math.Max(0, lines.FindIndex(line => line.Trim() == heading)), line => line.TrimStart().StartsWith('|'));
        if (head < 0 || lines.FindIndex(line => line.Trim() == heading) < 0 || head + 1 >= lines.Count)
            return null;
        var end = head + 2;
        while (end < lines.Count && lines[end].TrimStart().StartsWith('|'))
            end++;
        return ([.. Cells(lines[head]).Select(cell => cell.ToLowerInvariant())], head + 2, end);
    }

    private static string Row(IEnumerable<string> cells) =>
        $"| {string.Join(" | ", cells)} |"
            .Replace("|  |", "| |", StringComparison.Ordinal)
            .Replace("|  |", "| |", StringComparison.Ordinal);

    private static List<string> Cells(string line)
    {
        var inside = line.Trim().Trim('|').Split('|');
        return [.. inside.Select(cell => cell.Trim())];
    }
}
