using ClassKit.Content.Rosters;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Desk.Kitchen;

/// <summary>Cells that were pasted without a line that names their columns: what each is has to be said by whoever pasted them.</summary>
/// <param name="Text">What was pasted.</param>
/// <param name="Rows">Its cells, every row as wide as the widest.</param>
public sealed record PastedCells(string Text, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>Wider than any list of students.</summary>
    private const int MostColumns = 60;

    /// <summary>How many columns there are; 2 or more.</summary>
    public int Width => Rows[0].Count;

    /// <summary>The cells of a text; null where each line is one name. A comma alone parts a last name from a first one.</summary>
    public static PastedCells? Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = text.Split('\n').Select(line => line.Trim('\r', ' ')).Where(line => line.Trim().Length > 0).ToList();
        var separator =
            lines.Exists(line => line.Contains('\t', StringComparison.Ordinal)) ? '\t'
            : lines.Exists(line => line.Contains(';', StringComparison.Ordinal)) ? ';'
            : lines.Exists(line => line.Contains('@', StringComparison.Ordinal)) ? ','
            : '\n';
        var rows = lines.Select(line => line.Split(separator).Select(cell => cell.Trim().Trim('"').Trim()).ToList()).ToList();
        var width = rows.Count == 0 ? 0 : rows.Max(row => row.Count);
        return width is < 2 or > MostColumns
            ? null
            : new(text, [.. rows.Select(row => (IReadOnlyList<string>)[.. row, .. Enumerable.Repeat("", width - row.Count)])]);
    }

    /// <summary>What a column most likely is, to be put right by whoever knows; null for nothing that is wanted.</summary>
    public RosterField? Guess(int column)
    {
        if (IsAddress(column))
            return RosterField.Email;
        // A number of the line is nobody's.
        if (RunningNumbers.Are(Rows.Select(row => row[column])))
            return null;
        if (IsNumber(column))
            return Enumerable.Range(0, column).Any(IsNumber) ? null : RosterField.Id;
        List<int> words = [.. Enumerable.Range(0, Width).Where(other => !IsAddress(other) && !IsNumber(other))];
        return words.Count == 1
            ? RosterField.Name
            : words.IndexOf(column) switch
            {
                0 => RosterField.LastName,
                1 => RosterField.FirstName,
                _ => null,
            };
    }

    /// <summary>The table with a line on top that names its columns.</summary>
    /// <param name="title">What a column is called; null for one that is left aside.</param>
    public string Table(Func<int, string?> title)
    {
        ArgumentNullException.ThrowIfNull(title);
        List<int> taken = [.. Enumerable.Range(0, Width).Where(column => title(column) is not null)];
        return string.Concat(
            Rows.Select(row => taken.Select(column => row[column]))
                .Prepend(taken.Select(column => title(column)!))
                .Select(cells =>
                    string.Join(',', cells.Select(cell => $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\n"
                )
        );
    }

    private bool IsAddress(int column) => Filled(column).Any() && Filled(column).All(cell => cell.Contains('@', StringComparison.Ordinal));

    private bool IsNumber(int column) =>
        Filled(column).Any() && Filled(column).All(cell => cell.Any(char.IsAsciiDigit) && !cell.Contains(' ', StringComparison.Ordinal));

    private IEnumerable<string> Filled(int column) => Rows.Select(row => row[column]).Where(cell => cell.Length > 0);
}
