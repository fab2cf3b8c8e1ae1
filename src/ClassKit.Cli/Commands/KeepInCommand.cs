using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit keep-in</c></summary>
internal static class KeepInCommand
{
    public static Command Create(Report report)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The folder to keep the record in, such as one on another disk." };
        var path = RecordOptions.Record();
        var command = new Command(MoveRecord.Kind, "Keep the record in another folder; the teaching folder then says where it is.")
        {
            folder,
            path,
        };
        command.SetAction(parsed =>
            report.Done(run =>
                Produced.Of(
                    MoveRecord.Run(new(parsed.GetRequiredValue(path), parsed.GetRequiredValue(folder), RecordOptions.Now), run),
                    MoveRecord.Write
                )
            )
        );
        return command;
    }
}
