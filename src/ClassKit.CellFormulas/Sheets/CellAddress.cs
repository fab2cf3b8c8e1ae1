using System.Globalization;

namespace ClassKit.CellFormulas.Sheets;

/// <summary>One cell of one sheet.</summary>
/// <param name="Sheet">The sheet's name as shown on its tab, unquoted; compared without regard to letter case.</param>
/// <param name="Row">1 to 1 048 576.</param>
/// <param name="Column">1 (A) to 16 384 (XFD).</param>
public readonly record struct CellAddress(string Sheet, int Row, int Column)
{
    /// <summary>The last row of a sheet (ECMA-376 Part 1, 18.17.2.3, as all programs of today have it).</summary>
    public const int LastRow = 1_048_576;

    /// <summary>The last column of a sheet, XFD.</summary>
    public const int LastColumn = 16_384;

    /// <summary>The cell within its sheet, such as <c>B5</c>.</summary>
    public string Cell => ColumnLetters(Column) + Row.ToString(CultureInfo.InvariantCulture);

    /// <summary>The letters of a column: 1 is A, 27 is AA.</summary>
    public static string ColumnLetters(int column)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(column, 1);
        Span<char> letters = stackalloc char[8];
        var at = letters.Length;
        for (var rest = column; rest > 0; rest = (rest - 1) / 26)
            letters[--at] = (char)('A' + (rest - 1) % 26);
        return new string(letters[at..]);
    }

    /// <summary>Reads <c>B5</c> or <c>$B$5</c> as a cell of the given sheet.</summary>
    public static bool TryParse(string sheet, ReadOnlySpan<char> cell, out CellAddress address)
    {
        address = default;
        var at = 0;
        if (at < cell.Length && cell[at] == '$')
            at++;
        var column = 0;
        var lettersFrom = at;
        for (; at < cell.Length && char.IsAsciiLetter(cell[at]) && at - lettersFrom < 3; at++)
            column = column * 26 + (char.ToUpperInvariant(cell[at]) - 'A' + 1);
        if (at == lettersFrom)
            return false;
        if (at < cell.Length && cell[at] == '$')
            at++;
        if (at == cell.Length || !int.TryParse(cell[at..], NumberStyles.None, CultureInfo.InvariantCulture, out var row))
            return false;
        if (row is < 1 or > LastRow || column > LastColumn)
            return false;
        address = new(sheet, row, column);
        return true;
    }

    /// <inheritdoc/>
    public bool Equals(CellAddress other) =>
        Row == other.Row && Column == other.Column && string.Equals(Sheet, other.Sheet, StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        HashCode.Combine(Row, Column, Sheet is null ? 0 : StringComparer.OrdinalIgnoreCase.GetHashCode(Sheet));

    /// <summary>The address as a formula writes it, the sheet always quoted: <c>'Griddle buns'!B5</c>.</summary>
    public override string ToString() => $"'{Sheet.Replace("'", "''", StringComparison.Ordinal)}'!{Cell}";
}
