using ClassKit.CellFormulas.Sheets;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>One end of a reference: a cell, or only a row or only a column of a reference to whole rows or columns.</summary>
/// <param name="Row">1 to 1 048 576; 0 when only a column is given.</param>
/// <param name="RowFixed">True with a <c>$</c> before the row.</param>
/// <param name="Column">1 to 16 384; 0 when only a row is given.</param>
/// <param name="ColumnFixed">True with a <c>$</c> before the column.</param>
public readonly record struct Corner(int Row, bool RowFixed, int Column, bool ColumnFixed)
{
    /// <summary>The corner as written, such as <c>$B5</c>.</summary>
    public override string ToString() =>
        string.Concat(
            Column == 0 ? "" : (ColumnFixed ? "$" : "") + CellAddress.ColumnLetters(Column),
            Row == 0 ? "" : (RowFixed ? "$" : "") + Row.ToString(System.Globalization.CultureInfo.InvariantCulture)
        );
}
