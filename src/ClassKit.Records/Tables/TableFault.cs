namespace ClassKit.Records.Tables;

/// <summary>Why tables cannot be read back, as a fact.</summary>
public abstract record TableFault
{
    private TableFault() { }

    /// <summary>The record holds something already.</summary>
    public sealed record NotEmpty : TableFault;

    /// <summary>The tables are of another version.</summary>
    /// <param name="Version">Theirs; null where nothing says it.</param>
    public sealed record OtherVersion(int? Version) : TableFault;

    /// <summary>A table is missing, or has other columns.</summary>
    /// <param name="Table">Which.</param>
    /// <param name="Columns">The columns that it should have.</param>
    public sealed record OtherColumns(string Table, string Columns) : TableFault;

    /// <summary>A row does not fit into its table.</summary>
    /// <param name="Table">Which.</param>
    /// <param name="Row">Counted from 1, without the header.</param>
    /// <param name="What">As the database says it.</param>
    public sealed record BadRow(string Table, int Row, string What) : TableFault;

    /// <summary>Rows refer to others that are not there.</summary>
    /// <param name="Table">In which table they stand.</param>
    /// <param name="Referred">The table that they refer to.</param>
    public sealed record Dangling(string Table, string Referred) : TableFault;
}
