using System.Text;

namespace ClassKit.Content.Sheets;

/// <summary>How a table is written: what stands between its fields, and how its lines end.</summary>
/// <param name="Separator">Between fields.</param>
/// <param name="End">Of a line.</param>
internal sealed record CsvShape(char Separator, string End)
{
    /// <summary>The shape of a table as it is; RFC 4180's for one without a line.</summary>
    /// <param name="text">The table, without a byte order mark.</param>
    public static CsvShape Of(string text)
    {
        var end =
            text.Contains('\n', StringComparison.Ordinal) && !text.Contains("\r\n", StringComparison.Ordinal) ? "\n"
            : text.Contains('\r', StringComparison.Ordinal) && !text.Contains('\n', StringComparison.Ordinal) ? "\r"
            : "\r\n";
        return new(CsvReader.SeparatorOf(text.ReplaceLineEndings("\n")), end);
    }

    /// <summary>A line of such a table.</summary>
    public string Line(IEnumerable<string> fields) =>
        new StringBuilder().AppendJoin(Separator, fields.Select(Quoted)).Append(End).ToString();

    private string Quoted(string field) =>
        field.AsSpan().IndexOfAny(Separator, '"', '\n') < 0 && !field.Contains('\r', StringComparison.Ordinal)
            ? field
            : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
