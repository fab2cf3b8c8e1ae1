using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Checking;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit check</c></summary>
internal static class CheckCommand
{
    public static Command Create(Report report)
    {
        var paths = new Argument<string[]>("PATH") { Description = "Lessons, exercises, rubrics, class profiles, rosters, or folders of them.", Arity = ArgumentArity.OneOrMore };
        var draws = new Option<bool>("--draws") { Description = "Show how the draws of every exercise fared: variants, effort, and what was thrown away and why." };
        var command = new Command("check", "Check authored content; every problem with file and line.") { paths, draws };
        command.SetAction(parsed => Run(report, parsed.GetRequiredValue(paths), parsed.GetValue(draws)));
        return command;
    }

    private static int Run(Report report, string[] paths, bool draws)
    {
        var check = report.Watch(run => CheckContent.Run(new(Library.OfPaths(), paths), run));
        if (draws) DrawsTable.Write(report.Output, check.Exercises);
        if (check.Problems.Count > 0) return report.Problems(check.Problems);
        foreach (var item in check.Items) report.Output.WriteLine($"{DisplayPath.Of(item.Path)}: fine");
        foreach (var note in check.Notes) report.Output.WriteLine(note);
        foreach (var proof in check.Rules) RuleLines.Write(report.Output, proof);
        report.Output.WriteLine($"{check.Items.Count} checked, no problem found.");
        return ExitCode.Done;
    }
}
