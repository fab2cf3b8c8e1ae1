using System.Globalization;
using ClassKit.Notes;
using ClassKit.Records.Tables;
using ClassKit.UseCases.Erasing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>Writes out the whole record as plain tables, one a file, from which an empty one can be filled.</summary>
public static class WriteOutRecord
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = OwnOutput.OfWholeRecord;

    /// <summary>The file that says of which version the tables are.</summary>
    internal const string VersionFile = "version.csv";

    internal static readonly string[] VersionHeader = ["version"];

    /// <summary>The tables, which are read when they are written.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static WrittenOut Run(WriteOutRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        return new(request.Look, [.. run.Each(RunStep.Tabulating, PlainTables.Shapes(request.Look))]);
    }

    /// <summary>The files of the tables.</summary>
    public static Produced Write(WrittenOut tables)
    {
        ArgumentNullException.ThrowIfNull(tables);
        return new(
            [
                OutputFile.OfText(
                    VersionFile,
                    CsvText.Plain([VersionHeader, [PlainTables.Version.ToString(CultureInfo.InvariantCulture)]])
                ),
                .. tables.Tables.Select(table => new OutputFile(FileOf(table.Name), stream =>
                    CsvText.Plain(stream, PlainTables.Rows(tables.Look, table).Prepend([.. table.Columns.Select(column => column.Name)]))
                )),
            ],
            [new Note.WrittenOut(tables.Tables.Count)],
            []
        )
        {
            IsMadeInTurn = true,
        };
    }

    /// <summary>The file of a table.</summary>
    internal static string FileOf(string table) => table + ".csv";
}
