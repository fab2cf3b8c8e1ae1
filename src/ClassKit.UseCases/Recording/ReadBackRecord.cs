using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.Records.Tables;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>Fills an empty record from the tables that another was written out as.</summary>
public static class ReadBackRecord
{
    /// <summary>What the change is called.</summary>
    public const string Kind = "read-back";

    /// <summary>Fills the record.</summary>
    /// <returns>How many rows it has now, or why nothing was written.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<ReadBack> Run(ReadBackRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var count = 0;
        var step = run.Begin(RunStep.Recording);
        return RecordTroubles.Told(() =>
        {
            var table = Path.GetFileNameWithoutExtension(WriteOutRecord.VersionFile);
            try
            {
                var fault = TableFilling.Fill(request.Record, Version(request), name =>
                {
                    table = name;
                    return Rows(request, name)
                        ?.Select(row =>
                        {
                            count++;
                            step.Next();
                            return row;
                        });
                });
                return fault is null ? new Reading<ReadBack>(new(count), []) : new(null, [Problem(request.Named, fault)]);
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                return new(
                    null,
                    [
                        new(
                            At(request.Named, table),
                            null,
                            $"It cannot be read: {failure.Message}",
                            "Nothing was written. Close the program that has it open, and read the tables back again."
                        ),
                    ]
                );
            }
        });
    }

    /// <summary>What the instructor is told.</summary>
    public static Produced Write(ReadBack read)
    {
        ArgumentNullException.ThrowIfNull(read);
        return new([], [new Note.ReadBack(read.Rows)], []);
    }

    private static int? Version(ReadBackRequest request) =>
        Rows(request, Path.GetFileNameWithoutExtension(WriteOutRecord.VersionFile))?.ElementAtOrDefault(1) is [var text]
        && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var version)
            ? version
            : null;

    private static IEnumerable<IReadOnlyList<string>>? Rows(ReadBackRequest request, string table) =>
        request.Table(WriteOutRecord.FileOf(table)) is { } file ? CsvText.Rows(file) : null;

    private static Diagnostic Problem(string named, TableFault fault) =>
        fault switch
        {
            TableFault.NotEmpty => new(
                named,
                null,
                "The record holds something already",
                "Name a file that does not exist yet: tables are read into an empty record only."
            ),
            TableFault.OtherVersion(null) => new(
                named,
                null,
                $"Nothing says of which version the tables are: `{WriteOutRecord.VersionFile}` is missing or says no number",
                "Name the folder that the record was written out to."
            ),
            TableFault.OtherVersion(var version) => new(
                named,
                null,
                $"The tables are of version {version}, and this program reads version {PlainTables.Version}",
                "Read them back with the program that wrote them out; this one then brings that record up to date."
            ),
            TableFault.OtherColumns(var table, var columns) => new(
                At(named, table),
                null,
                "It is missing, or its columns are others",
                $"Its first line is: {columns}."
            ),
            TableFault.BadRow(var table, var row, var what) => new(
                At(named, table),
                row + 1,
                $"The row does not fit in ({what.ReplaceLineEndings(" ")})",
                "Put the table back as it was written out."
            ),
            TableFault.Dangling(var table, var referred) => new(
                At(named, table),
                null,
                $"A row refers to one of `{referred}` that is not there",
                "Put the tables back as they were written out."
            ),
            _ => throw new System.Diagnostics.UnreachableException($"No words for {fault}."),
        };

    private static string At(string named, string table) => Path.Combine(named, WriteOutRecord.FileOf(table));
}
