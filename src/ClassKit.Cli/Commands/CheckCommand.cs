using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Checking;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit check</c></summary>
internal static class CheckCommand
{
    public static Command Create(Report report)
    {
        var paths = new Argument<string[]>("PATH")
        {
            Description = "Lessons, exercises, rubrics, class profiles, rosters, or folders of them.",
            Arity = ArgumentArity.OneOrMore,
        };
        var draws = new Option<bool>("--draws")
        {
            Description = "Show how the draws of every exercise fared: variants, effort, and what was thrown away and why.",
        };
        var fine = new Option<bool>("--fine")
        {
            Description =
                "Name what is fine as well and what was made of it, and show what rules for grades make of three invented students.",
        };
        var turns = new Option<bool>("--wrong-turns")
        {
            Description = "Show the likeliest wrong turns that no exercise lists, and those that its numbers hide.",
        };
        var command = new Command(
            "check",
            "Check authored content: what stands in the way, what is most likely not meant, and what is good to know, each with file and line."
        )
        {
            paths,
            draws,
            fine,
            turns,
        };
        command.SetAction(parsed =>
            Run(report, parsed.GetRequiredValue(paths), parsed.GetValue(draws), parsed.GetValue(fine), parsed.GetValue(turns))
        );
        return command;
    }

    private static int Run(Report report, string[] paths, bool draws, bool fine, bool turns)
    {
        var check = report.Watch(run => CheckContent.Run(new(Library.OfPaths(), paths), run));
        if (draws)
            DrawsTable.Write(report.Output, check.Exercises);
        if (turns)
            ForeseenTable.Write(report.Output, check.Exercises);
        if (fine)
            Fine(report, check);
        // Who checks a rule alone wants to see what it makes of students.
        if (fine || check.Items.All(item => item.Kind == ContentKind.GradeRule))
            foreach (var proof in check.Rules)
                RuleLines.Write(report.Output, proof);
        return CheckLines.Write(report, check, fine);
    }

    private static void Fine(Report report, ContentProof check)
    {
        // A lesson's problems are in its files.
        foreach (
            var item in check.Items.Where(item =>
                !check
                    .Problems.Concat(check.Doubts)
                    .Any(one => one.File == item.Path || one.File.StartsWith(item.Path + "/", StringComparison.Ordinal))
            )
        )
            report.Output.WriteLine($"{DisplayPath.Of(item.Path)}: fine");
    }
}
