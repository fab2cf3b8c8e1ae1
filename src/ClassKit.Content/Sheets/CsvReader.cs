using System.Text;
using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.Sheets;

/// <summary>Reads comma-separated values as RFC 4180 has them, with any one separator.</summary>
internal static class CsvReader
{
    /// <summary>What begins a line that is somebody's remark.</summary>
    public const string Remark = "# ";

    private const char Quote = '"';

    /// <summary>How many lines tell: titles, dates and rooms may stand above a table.</summary>
    private const int Telling = 20;

    /// <summary>
    /// What stands in most of the first lines, remarks and quotes apart: spreadsheet programs write <c>;</c> or tabs where the comma is the
    /// decimal sign, and a title above the table has neither.
    /// </summary>
    public static char SeparatorOf(string text)
    {
        var lines = text.Split('\n', Telling + 1)
            .Take(Telling)
            .Where(line => !line.StartsWith(Remark, StringComparison.Ordinal))
            .Select(Unquoted)
            .ToList();
        int Lines(char separator) => lines.Count(line => line.Contains(separator, StringComparison.Ordinal));
        var (best, most) = (',', Lines(','));
        foreach (var candidate in ";\t")
        {
            // In as many lines as commas: those are found in numbers and sentences too.
            if (Lines(candidate) is > 0 and var found && found >= most)
                (best, most) = (candidate, found);
        }
        return best;
    }

    private static string Unquoted(string line) => string.Concat(line.Split(Quote).Where((_, at) => at % 2 == 0));

    public static IReadOnlyList<CsvRecord> Read(string text, char separator, ProblemList problems)
    {
        var records = new List<CsvRecord>();
        var (line, at) = (1, 0);
        while (at < text.Length)
        {
            var (start, fields) = (line, new List<string>());
            do
            {
                if (ReadField(text, separator, ref at, ref line) is not { } field)
                {
                    problems.Add(
                        start,
                        "A quote opens in this record and never closes",
                        "Close it with `\"`; a quote inside a quoted field is written twice."
                    );
                    return records;
                }
                fields.Add(field);
            } while (Take(text, separator, ref at));
            if (!Take(text, '\n', ref at) && at < text.Length)
            {
                problems.Add(
                    line,
                    $"`{text[at]}` follows a closing quote",
                    "A quoted field ends with its quote; a quote inside it is written twice."
                );
                return records;
            }
            line++;
            records.Add(new(start, fields));
        }
        return records;
    }

    private static string? ReadField(string text, char separator, ref int at, ref int line)
    {
        if (!Take(text, Quote, ref at))
        {
            var start = at;
            while (at < text.Length && text[at] != separator && text[at] != '\n')
                at++;
            return text[start..at];
        }
        var field = new StringBuilder();
        while (at < text.Length)
        {
            var next = text[at++];
            if (next == Quote && !Take(text, Quote, ref at))
                return field.ToString();
            if (next == '\n')
                line++;
            field.Append(next);
        }
        return null;
    }

    private static bool Take(string text, char wanted, ref int at)
    {
        if (at >= text.Length || text[at] != wanted)
            return false;
        at++;
        return true;
    }
}
