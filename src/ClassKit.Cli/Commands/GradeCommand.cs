using System.CommandLine;
using ClassKit.UseCases;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit grade</c></summary>
internal static class GradeCommand
{
    public static Command Create(Report report)
    {
        var dealt = new Argument<string>("DEALT") { Description = "The folder that `classkit deal` made." };
        var returned = new Option<string>("--returned") { Description = "The folder or zip with what came back.", HelpName = "DIR-or-ZIP", Required = true };
        var to = CommonOptions.Out("grades, feedback and class report");
        var command = new Command(GradeClass.Kind, "Grade returned workbooks: gradebook, feedback a student, class report.") { dealt, returned, to };
        command.SetAction(parsed => report.Write(
            parsed.GetRequiredValue(to), GradeClass.Kind, GradeClass.Make(parsed.GetRequiredValue(dealt), parsed.GetRequiredValue(returned))));
        return command;
    }
}
