using ClassKit.Content.Diagnostics;
using ClassKit.Content.Wording;
using Markdig.Extensions.Tables;
using Markdig.Syntax;

namespace ClassKit.Content.Outline;

/// <summary>Reads sections that are a table.</summary>
internal static class Tables
{
    /// <summary>The rows of a section that must be one table with exactly these columns.</summary>
    public static IReadOnlyList<TableRow> Rows(Section? section, IReadOnlyList<string> columns, ProblemList problems)
    {
        if (section is null || Table(section, columns, problems) is not { } table)
            return [];
        var headings = Headings(table, section.Source);
        foreach (var column in columns.Where(column => !headings.Contains(column, StringComparer.OrdinalIgnoreCase)))
            problems.Add(table.Line + 1, $"The table has no column `{column}`", $"Its columns are: {string.Join(", ", columns)}.");
        foreach (
            var heading in headings.Where(heading => heading.Length > 0 && !columns.Contains(heading, StringComparer.OrdinalIgnoreCase))
        )
            problems.Add(
                table.Line + 1,
                $"The table has a column `{heading}`, which is not known here",
                NearestWord.Advice(heading, [.. columns])
            );
        return Rows(table, headings, section.Source, problems);
    }

    /// <summary>The rows of a section that must be one table, whatever its columns.</summary>
    public static (IReadOnlyList<string> Headings, IReadOnlyList<TableRow> Rows) Any(
        Section? section,
        IReadOnlyList<string> example,
        ProblemList problems
    )
    {
        if (section is null || Table(section, example, problems) is not { } table)
            return ([], []);
        var headings = Headings(table, section.Source);
        return (headings, Rows(table, headings, section.Source, problems));
    }

    private static Table? Table(Section section, IReadOnlyList<string> columns, ProblemList problems)
    {
        foreach (var stray in section.Blocks.Where(block => block is not Markdig.Extensions.Tables.Table))
            problems.Add(
                stray.Line + 1,
                $"This does not belong to the table in `{section.Heading.Text}`",
                $"Begin the table with a line `| {string.Join(" | ", columns)} |` and a line `|{string.Concat(columns.Select(_ => "---|"))}` below it."
            );
        var tables = section.Blocks.OfType<Table>().ToList();
        foreach (var extra in tables.Skip(1))
            problems.Add(
                extra.Line + 1,
                $"This is a second table in `{section.Heading.Text}`",
                "Put both into one: a blank line ends a table."
            );
        return tables.FirstOrDefault();
    }

    private static List<string> Headings(Table table, string source) =>
        [.. table.OfType<Markdig.Extensions.Tables.TableRow>().First().OfType<TableCell>().Select(cell => Text(cell, source))];

    private static List<TableRow> Rows(Table table, List<string> headings, string source, ProblemList problems)
    {
        var rows = new List<TableRow>();
        foreach (var row in table.OfType<Markdig.Extensions.Tables.TableRow>().Skip(1))
        {
            var cells = row.OfType<TableCell>().Select(cell => Text(cell, source)).ToList();
            var named = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
            for (var i = 0; i < cells.Count; i++)
            {
                if (i < headings.Count && headings[i].Length > 0)
                    named[headings[i]] = cells[i];
                else if (cells[i].Length > 0)
                    problems.Add(
                        row.Line + 1,
                        $"The cell `{cells[i]}` has no column",
                        "Give every row as many cells as the table has headings."
                    );
            }
            rows.Add(new(row.Line + 1, named));
        }
        return rows;
    }

    // The cell as written: its inline pieces know where in the source they came from.
    private static string Text(TableCell cell, string source)
    {
        var pieces = cell.Descendants<LeafBlock>().Where(leaf => leaf.Inline is not null).SelectMany(leaf => leaf.Inline!).ToList();
        return pieces.Count == 0
            ? ""
            : Prose
                .OneLine(Section.Slice(source, pieces.Min(piece => piece.Span.Start), pieces.Max(piece => piece.Span.End)))
                .Replace("\\|", "|", StringComparison.Ordinal);
    }
}
