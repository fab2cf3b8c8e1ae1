namespace ClassKit.CellFormulas.Syntax;

/// <summary>The rows of a table that a reference means.</summary>
/// <remarks>Source: ECMA-376 Part 1, 18.17.6.2 (structure references).</remarks>
[Flags]
public enum TableRows
{
    /// <summary>No row.</summary>
    None = 0,

    /// <summary><c>#Headers</c>: the row with the columns' names.</summary>
    Headers = 1,

    /// <summary><c>#Data</c>: the rows between; also meant when no rows are named.</summary>
    Data = 2,

    /// <summary><c>#Totals</c>: the row below.</summary>
    Totals = 4,

    /// <summary><c>#All</c>.</summary>
    All = Headers | Data | Totals,

    /// <summary><c>#This Row</c> or <c>@</c>: of the data, the row that the formula stands in.</summary>
    ThisRow = 8,
}
