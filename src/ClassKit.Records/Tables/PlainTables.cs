using System.Globalization;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Tables;

/// <summary>The whole record as tables of text, and back: nothing in it can only be read by a program.</summary>
/// <remarks>A cell that is absent and one that is empty are told apart by their column: one that may be absent is never empty.</remarks>
public static class PlainTables
{
    /// <summary>The version of the tables that this program writes and reads.</summary>
    public static int Version => Migrations.Latest;

    /// <summary>Every table, in an order in which whatever is referred to comes first.</summary>
    public static IReadOnlyList<TableShape> Shapes(RecordSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        var names = session.Query("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY rowid", row =>
            row.Text(0)
        );
        return
        [
            .. names.Select(name => new TableShape(
                name,
                session.Query(
                    "SELECT name, type, \"notnull\", pk FROM pragma_table_info($1) ORDER BY cid",
                    row => new ColumnShape(row.Text(0), row.Text(1), row.Whole(2) == 0 && row.Whole(3) == 0),
                    name
                )
            )),
        ];
    }

    /// <summary>The rows of a table as texts, in the order of its key.</summary>
    public static IEnumerable<IReadOnlyList<string>> Rows(RecordSession session, TableShape table)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(table);
        return session.Stream($"SELECT {table.List} FROM {table.Name} ORDER BY {Key(session, table)}", row =>
            (IReadOnlyList<string>)[.. table.Columns.Select((column, at) => Cell(row, at, column))]
        );
    }

    /// <summary>Puts a row of texts into a table.</summary>
    /// <exception cref="FormatException">A cell is not what its column holds.</exception>
    internal static void Insert(RecordSession session, TableShape table, IReadOnlyList<string> cells) =>
        session
            .Command(
                $"INSERT INTO {table.Name} ({table.List}) VALUES ({string.Join(", ", table.Columns.Select((_, at) => $"${at + 1}"))})",
                [.. table.Columns.Select((column, at) => Value(cells[at], column))]
            )
            .ExecuteNonQuery();

    private static string Key(RecordSession session, TableShape table)
    {
        var key = session.Query("SELECT name FROM pragma_table_info($1) WHERE pk > 0 ORDER BY pk", row => row.Text(0), table.Name);
        return string.Join(", ", key);
    }

    private static string Cell(Row row, int at, ColumnShape column) =>
        row.Raw(at) switch
        {
            null => "",
            byte[] => row.Unpacked(at),
            long number => number.ToString(CultureInfo.InvariantCulture),
            var text => Shield((string)text),
        };

    private static object? Value(string cell, ColumnShape column) =>
        column switch
        {
            { MayBeNull: true } when cell.Length == 0 => null,
            { Kind: "INTEGER" } => long.Parse(cell, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture),
            { Kind: "BLOB" } => Packed.Of(cell),
            _ => Unshield(cell),
        };

    /// <summary>
    /// An apostrophe before what a spreadsheet could take for a formula, and before every other apostrophe that begins a cell, so that
    /// taking it off gives what was there.
    /// </summary>
    private static string Shield(string text) =>
        text.Length > 0 && "=+-@\t\r'".Contains(text[0], StringComparison.Ordinal) ? "'" + text : text;

    private static string Unshield(string cell) => cell.StartsWith('\'') ? cell[1..] : cell;
}
