using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Beginning;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit begin</c></summary>
internal static class BeginCommand
{
    public static Command Create(Report report)
    {
        var only = new Option<BeginPart>("--only")
        {
            Description =
                "lesson, class or exercise, to begin one more of them in a folder of its own; a whole teaching folder if left out.",
            HelpName = "WHAT",
        };
        var to = CommonOptions.Out("files to change; it must be new");
        var command = new Command(
            BeginTeaching.Kind,
            "Begin a teaching folder of your own: a lesson, a class, prices, rubrics and exercises that say what may be changed."
        )
        {
            only,
            to,
        };
        command.SetAction(parsed =>
            report.Write(new(parsed.GetRequiredValue(to), BeginTeaching.Kind), run =>
                BeginTeaching.Write(BeginTeaching.Run(new(parsed.GetValue(only)), run))
            )
        );
        return command;
    }
}
