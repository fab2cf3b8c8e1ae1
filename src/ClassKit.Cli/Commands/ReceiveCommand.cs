using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Handing;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit receive</c></summary>
internal static class ReceiveCommand
{
    public static Command Create(Report report)
    {
        var bundle = new Argument<string>("BUNDLE") { Description = "The file that hand-over made." };
        var to = CommonOptions.Out("the lesson; it must be new");
        var command = new Command(ReceiveLesson.Kind, "Open a lesson that was handed over into a new folder, and check it.") { bundle, to };
        command.SetAction(parsed => Run(report, parsed.GetRequiredValue(bundle), parsed.GetRequiredValue(to)));
        return command;
    }

    private static int Run(Report report, string bundle, string to)
    {
        ContentProof? check = null;
        var written = report.Write(new(to, ReceiveLesson.Kind, bundle), run =>
        {
            var reading = ReceiveLesson.Run(new(new Upload(bundle, () => File.OpenRead(bundle))), run);
            check = reading.Model?.Check;
            return Produced.Of(reading, ReceiveLesson.Write);
        });
        return written == ExitCode.Done && check is not null ? CheckLines.Write(report, check, fine: false) : written;
    }
}
