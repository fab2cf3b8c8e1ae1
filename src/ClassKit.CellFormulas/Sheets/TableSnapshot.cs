namespace ClassKit.CellFormulas.Sheets;

/// <summary>A table: a rectangle of a sheet whose columns have names.</summary>
/// <param name="Name">As formulas name it; compared without regard to letter case.</param>
/// <param name="Sheet">The sheet that it lies on.</param>
/// <param name="Top">Its first row, that of the heads if there are any; rows and columns from 1.</param>
/// <param name="Left">Its first column.</param>
/// <param name="Bottom">Its last row, that of the totals if there are any.</param>
/// <param name="HasHeaders">Whether a row of heads is part of it.</param>
/// <param name="HasTotals">Whether a row of totals is part of it.</param>
/// <param name="Columns">The columns' names from the left.</param>
public sealed record TableSnapshot(
    string Name,
    string Sheet,
    int Top,
    int Left,
    int Bottom,
    bool HasHeaders,
    bool HasTotals,
    IReadOnlyList<string> Columns
);
