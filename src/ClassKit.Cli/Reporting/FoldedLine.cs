using System.Globalization;
using System.Text;

namespace ClassKit.Cli.Reporting;

/// <summary>A line as rows of a terminal: broken at spaces only, so that a path or an address stays whole to be copied.</summary>
internal static class FoldedLine
{
    /// <summary>How far what runs on stands in, behind where its line begins.</summary>
    private const int Hanging = 2;

    /// <summary>The rows that a line takes.</summary>
    /// <param name="line">Without its end.</param>
    /// <param name="width">How many columns a row may take.</param>
    public static IEnumerable<string> Of(string line, int width)
    {
        if (ColumnsOf(line) <= width)
            return [line];
        var start = line.Length - line.TrimStart(' ').Length;
        var hang = HangOf(line, start, width);
        List<string> rows = [];
        var row = new StringBuilder(line[..start]);
        var (used, isBegun) = (start, false);
        foreach (var (gap, word) in Words(line[start..], width * 2 / 3))
        {
            var columns = ColumnsOf(word);
            if (isBegun && used + gap + columns > width)
            {
                rows.Add(row.ToString());
                row.Clear().Append(' ', hang);
                used = hang;
            }
            else
            {
                row.Append(' ', gap);
                used += gap;
            }
            row.Append(word);
            (used, isBegun) = (used + columns, true);
        }
        rows.Add(row.ToString());
        return rows;
    }

    /// <summary>What runs on stands under the last column of a table where that leaves it room, else a little behind where the line begins.</summary>
    private static int HangOf(string line, int start, int width)
    {
        var gap = line.LastIndexOf("  ", StringComparison.Ordinal);
        var column = gap < start ? 0 : ColumnsOf(line[..(gap + 2)]);
        return column > start && column <= width / 2 ? column : Math.Min(start + Hanging, width / 2);
    }

    /// <summary>Words with the spaces before each. What stands between backticks is a word too, unless it is long: a command is read as one.</summary>
    private static IEnumerable<(int Gap, string Word)> Words(string text, int longest)
    {
        var at = 0;
        while (at < text.Length)
        {
            var from = at;
            while (from < text.Length && text[from] == ' ')
                from++;
            var to = End(text, from, longest);
            if (to > from)
                yield return (from - at, text[from..to]);
            at = to;
        }
    }

    private static int End(string text, int from, int longest)
    {
        var to = from;
        while (to < text.Length && text[to] != ' ')
        {
            if (text[to] == '`' && text.IndexOf('`', to + 1) is var close && close > to && close - to <= longest)
                to = close;
            to++;
        }
        return to;
    }

    /// <summary>How many columns a text takes in a terminal: two for what East Asian type sets wide, none for marks on other signs.</summary>
    /// <remarks>Unicode Standard Annex #11, East Asian Width, by blocks.</remarks>
    private static int ColumnsOf(string text) => text.EnumerateRunes().Sum(ColumnsOf);

    private static int ColumnsOf(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format ? 0
        : rune.Value
            is (>= 0x1100 and <= 0x115F)
                or (>= 0x2E80 and <= 0xA4CF)
                or (>= 0xAC00 and <= 0xD7A3)
                or (>= 0xF900 and <= 0xFAFF)
                or (>= 0xFE30 and <= 0xFE6F)
                or (>= 0xFF00 and <= 0xFF60)
                or (>= 0xFFE0 and <= 0xFFE6)
                or (>= 0x1F300 and <= 0x1FAFF)
                or (>= 0x20000 and <= 0x3FFFD)
            ? 2
        : 1;
}
