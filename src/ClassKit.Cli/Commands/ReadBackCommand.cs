using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit read-back</c></summary>
internal static class ReadBackCommand
{
    public static Command Create(Report report)
    {
        var tables = new Argument<string>("TABLES") { Description = "The folder that `classkit write-out` made." };
        var path = RecordOptions.Record();
        var command = new Command(ReadBackRecord.Kind, "Fill an empty record from tables that another was written out as.")
        {
            tables,
            path,
        };
        command.SetAction(parsed =>
            report.Done(run =>
            {
                var folder = parsed.GetRequiredValue(tables);
                return Produced.Within(RecordPlace.Open(parsed.GetRequiredValue(path), RecordOptions.Now, mayBegin: true), record =>
                    Produced.Of(
                        ReadBackRecord.Run(
                            new(record, folder, name =>
                                File.Exists(Path.Combine(folder, name)) ? File.OpenRead(Path.Combine(folder, name)) : null
                            ),
                            run
                        ),
                        ReadBackRecord.Write
                    )
                );
            })
        );
        return command;
    }
}
