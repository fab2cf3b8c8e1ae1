using System.CommandLine;
using ClassKit.UseCases;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit grade</c></summary>
internal static class GradeCommand
{
    public static Command Create(Report report)
    {
        var dealt = GradingOptions.Dealt();
        var returned = GradingOptions.Returned();
        var corrections = GradingOptions.Corrections();
        var due = GradingOptions.Due();
        var to = CommonOptions.Out("grades, feedback and class report");
        var command = new Command(GradeClass.Kind, "Grade returned workbooks: gradebook, feedback a student, class report.") { dealt, returned, to, corrections, due };
        command.SetAction(parsed => report.Write(
            parsed.GetRequiredValue(to), GradeClass.Kind,
            GradeClass.Make(
                parsed.GetRequiredValue(dealt), parsed.GetRequiredValue(returned),
                parsed.GetValue(corrections) ?? GradeClass.CorrectionsIn(parsed.GetRequiredValue(to)),
                parsed.GetValue(due))));
        return command;
    }
}
