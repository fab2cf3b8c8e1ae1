using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Papers;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit paper</c></summary>
internal static class PaperCommand
{
    public static Command Create(Report report)
    {
        var dealt = GradingOptions.Dealt();
        var to = CommonOptions.Out("the workbook");
        var command = new Command(MakePaperSheet.Kind, "Make the workbook to type answers into that students wrote on paper.")
        {
            dealt,
            to,
        };
        command.SetAction(parsed =>
            report.Write(new(parsed.GetRequiredValue(to), MakePaperSheet.Kind, parsed.GetRequiredValue(dealt)), run =>
                Produced.Of(MakePaperSheet.Read(parsed.GetRequiredValue(dealt)), read =>
                    MakePaperSheet.Write(MakePaperSheet.Run(read, run))
                )
            )
        );
        return command;
    }
}
