using ClassKit.Content.Diagnostics;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Sheets;

/// <summary>A comma-separated file whose first line names its columns, in any order.</summary>
/// <remarks>RFC 4180; also with a byte order mark, with any line ends, and with <c>;</c> or tabs between the fields.</remarks>
internal sealed class CsvTable
{
    private CsvTable(char separator, IReadOnlyList<CsvRow> rows) => (Separator, Rows) = (separator, rows);

    /// <summary>What stands between the fields.</summary>
    public char Separator { get; }

    /// <summary>Every line below the header that has something on it.</summary>
    public IReadOnlyList<CsvRow> Rows { get; }

    /// <summary>Reads a table; what is wrong with its header or its quotes is added to <paramref name="problems"/>.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="columns">The columns that may be there, the necessary ones first.</param>
    /// <param name="necessary">How many of them must be there.</param>
    /// <param name="problems">Gathers what is wrong.</param>
    public static CsvTable Read(string text, IReadOnlyList<string> columns, int necessary, ProblemList problems)
    {
        var separator = CsvReader.SeparatorOf(text);
        List<CsvRecord> records = [.. CsvReader.Read(text, separator, problems).Where(record => !record.IsBlank)];
        if (records.Count == 0 || Header(records[0], separator, columns, necessary, problems) is not { } places)
            return new(separator, []);
        foreach (var record in records.Skip(1).Where(record => record.Fields.Count > places.Count))
            problems.Add(
                record.Line,
                $"The line has {record.Fields.Count} fields, and the header has {places.Count}",
                "Put quotes around a field that holds the separator."
            );
        return new(separator, [.. records.Skip(1).Select(record => new CsvRow(record, places))]);
    }

    private static Dictionary<string, int>? Header(
        CsvRecord header,
        char separator,
        IReadOnlyList<string> columns,
        int necessary,
        ProblemList problems
    )
    {
        var before = problems.Count;
        var places = new Dictionary<string, int>();
        for (var i = 0; i < header.Fields.Count; i++)
        {
            var column = header.Fields[i].Trim().ToLowerInvariant();
            if (!columns.Contains(column))
                problems.Add(
                    header.Line,
                    $"The header has a column `{header.Fields[i].Trim()}`, which is not known here",
                    NearestWord.Advice(column, columns)
                );
            else if (!places.TryAdd(column, i))
                problems.Add(header.Line, $"The header has the column `{column}` twice", "Keep one of them.");
        }
        foreach (var missing in columns.Take(necessary).Where(column => !places.ContainsKey(column)))
            problems.Add(
                header.Line,
                $"The header has no column `{missing}`",
                $"The first line reads `{string.Join(separator, columns)}`."
            );
        return problems.Count == before ? places : null;
    }
}
