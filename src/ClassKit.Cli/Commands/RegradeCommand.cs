using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit regrade</c></summary>
internal static class RegradeCommand
{
    public static Command Create(Report report)
    {
        var dealt = GradingOptions.Dealt();
        var returned = GradingOptions.Returned();
        var paper = GradingOptions.Paper();
        var corrections = GradingOptions.Corrections();
        var due = GradingOptions.Due();
        var profile = GradingOptions.Class();
        var takeOver = GradingOptions.TakeOver();
        var graded = new Option<string>("--graded")
        {
            Description = "The folder of the earlier grading, which is compared and with --write replaced.",
            HelpName = "DIR",
            Required = true,
        };
        var marking = new Option<string?>("--marking") { Description = "A changed marking scheme.", HelpName = "FILE" };
        var keys = new Option<string?>("--keys")
        {
            Description = "A lesson, or a folder of exercises, with corrected keys.",
            HelpName = "DIR",
        };
        var write = new Option<bool>("--write") { Description = "Write the new grades; without it they are only compared." };
        var command = new Command(
            "regrade",
            "Grade again under a changed marking scheme, corrected keys or new corrections: who changes, and why."
        )
        {
            dealt,
            returned,
            paper,
            graded,
            marking,
            keys,
            corrections,
            due,
            profile,
            takeOver,
            write,
        };
        GradingOptions.RequireWork(command, returned, paper);
        command.SetAction(parsed =>
        {
            var folder = parsed.GetRequiredValue(graded);
            var paths = new RegradePaths(
                new(parsed.GetRequiredValue(dealt), parsed.GetValue(returned))
                {
                    Paper = parsed.GetValue(paper),
                    Corrections = parsed.GetValue(corrections),
                    Due = parsed.GetValue(due),
                    ClassFile = parsed.GetValue(profile),
                    Graded = folder,
                    TakeOver = parsed.GetValue(takeOver),
                }
            )
            {
                Marking = parsed.GetValue(marking),
                Keys = parsed.GetValue(keys),
            };
            return parsed.GetValue(write)
                ? report.Write(
                    new(
                        folder,
                        GradeClass.Kind,
                        paths.Grading.Dealt,
                        paths.Grading.Returned,
                        paths.Grading.Paper,
                        paths.Marking,
                        paths.Keys,
                        paths.Grading.ClassFile
                    ),
                    Make
                )
                : report.Only(Make, "Nothing was written; add --write to put this on record.");

            Produced Make(Run run) => Produced.Of(paths.Read(), request => paths.Write(RegradeClass.Run(request, run)));
        });
        return command;
    }
}
