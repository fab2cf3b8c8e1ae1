namespace ClassKit.Content.Sheets;

/// <summary>One line of a <see cref="CsvTable"/>, its fields by column.</summary>
internal sealed class CsvRow(CsvRecord record, IReadOnlyDictionary<string, int> places)
{
    /// <summary>Where it begins, counted from 1.</summary>
    public int Line => record.Line;

    /// <summary>A field without the blanks around it; empty where the line ends before it or the table has no such column.</summary>
    public string this[string column] =>
        places.TryGetValue(column, out var place) && place < record.Fields.Count ? record.Fields[place].Trim() : "";
}
