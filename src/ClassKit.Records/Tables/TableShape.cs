namespace ClassKit.Records.Tables;

/// <summary>A table of the record.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Columns">Its columns, in order.</param>
public sealed record TableShape(string Name, IReadOnlyList<ColumnShape> Columns)
{
    internal string List => string.Join(", ", Columns.Select(column => column.Name));
}

/// <summary>A column.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">TEXT, INTEGER, or BLOB for a long text that is kept packed.</param>
/// <param name="MayBeNull">True if a value may be absent; then a text is never empty.</param>
public sealed record ColumnShape(string Name, string Kind, bool MayBeNull);
