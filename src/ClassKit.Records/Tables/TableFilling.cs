using ClassKit.Records.Storage;
using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Tables;

/// <summary>Reads tables back into an empty record.</summary>
public static class TableFilling
{
    private const int Constraint = 19;

    /// <summary>Fills a record in one transaction.</summary>
    /// <param name="record">Nothing may be in it yet.</param>
    /// <param name="version">The version of the tables, as they say it.</param>
    /// <param name="rows">The rows of a table by its name, the header first; null where there is no such table.</param>
    /// <returns>What is wrong, or null; where something is, nothing was written.</returns>
    public static TableFault? Fill(TeachingRecord record, int? version, Func<string, IEnumerable<IReadOnlyList<string>>?> rows)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(rows);
        return version == PlainTables.Version ? record.Fill(session => Fill(session, rows)) : new TableFault.OtherVersion(version);
    }

    private static TableFault? Fill(RecordSession session, Func<string, IEnumerable<IReadOnlyList<string>>?> rows)
    {
        var shapes = PlainTables.Shapes(session);
        if (shapes.Any(shape => session.Number($"SELECT EXISTS (SELECT 1 FROM {shape.Name})") > 0))
            return new TableFault.NotEmpty();
        foreach (var shape in shapes)
        {
            if (Fill(session, shape, rows(shape.Name)) is { } fault)
                return fault;
        }
        return session.One<TableFault>("SELECT \"table\", parent FROM pragma_foreign_key_check LIMIT 1", row => new TableFault.Dangling(
            row.Text(0),
            row.Text(1)
        ));
    }

    private static TableFault? Fill(RecordSession session, TableShape shape, IEnumerable<IReadOnlyList<string>>? rows)
    {
        var at = -1;
        foreach (var cells in rows ?? [])
        {
            if (++at == 0 && !cells.SequenceEqual(shape.Columns.Select(column => column.Name)))
                return new TableFault.OtherColumns(shape.Name, shape.List);
            if (at == 0)
                continue;
            if (cells.Count != shape.Columns.Count)
                return new TableFault.BadRow(shape.Name, at, $"{cells.Count} of {shape.Columns.Count}");
            try
            {
                PlainTables.Insert(session, shape, cells);
            }
            catch (Exception failure)
                when (failure is FormatException or OverflowException or SqliteException { SqliteErrorCode: Constraint })
            {
                return new TableFault.BadRow(shape.Name, at, failure.Message);
            }
        }
        return at < 0 ? new TableFault.OtherColumns(shape.Name, shape.List) : null;
    }
}
