using System.Text;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Rosters;

/// <summary>A class list of a workbook as a plain table: its titles and the lines below, which can then be changed line by line.</summary>
public static class PlainRoster
{
    /// <summary>The table in UTF-8 with a mark, which every spreadsheet reads; null where there is none to read.</summary>
    /// <param name="source">The workbook.</param>
    public static byte[]? Of(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var problems = new ProblemList(source.Shown);
        if (
            SheetTables.Read(source, problems) is not { } tables
            || !problems.IsEmpty
            || RosterReader.Chosen(tables) is not ({ } table, { } head)
        )
            return null;
        var shape = CsvShape.Of("");
        var lines = table.Records.Skip(head.At).ToList();
        return
        [
            .. Encoding.UTF8.GetPreamble(),
            .. Encoding.UTF8.GetBytes(
                string.Concat(
                    lines[..^RosterFoot.Count(lines[1..])]
                        .Select(line =>
                            shape.Line(line.Fields.Concat(Enumerable.Repeat("", Math.Max(0, head.Record.Fields.Count - line.Fields.Count))))
                        )
                )
            ),
        ];
    }
}
