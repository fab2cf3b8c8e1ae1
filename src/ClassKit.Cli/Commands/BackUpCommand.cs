using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit back-up</c></summary>
internal static class BackUpCommand
{
    public static Command Create(Report report)
    {
        var path = new Argument<string>("RECORD") { Description = "The file of the record, or the teaching folder that it lies in." };
        var command = new Command(BackUpRecord.Kind, "Read the record through and make a copy of it that is whole.") { path };
        command.SetAction(parsed =>
            report.Done(run =>
            {
                var now = RecordOptions.Now;
                return Produced.Within(RecordPlace.Open(parsed.GetRequiredValue(path), now, mayBegin: false), record =>
                    Produced.Of(BackUpRecord.Run(new(record, now), run), BackUpRecord.Write)
                );
            })
        );
        return command;
    }
}
