using System.CommandLine;
using ClassKit.UseCases;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit check</c></summary>
internal static class CheckCommand
{
    public static Command Create(Report report)
    {
        var paths = new Argument<string[]>("PATH") { Description = "Lessons, rubrics, class profiles, rosters, or folders of them.", Arity = ArgumentArity.OneOrMore };
        var command = new Command("check", "Check authored content; every problem with file and line.") { paths };
        command.SetAction(parsed => Run(report, parsed.GetRequiredValue(paths)));
        return command;
    }

    private static int Run(Report report, string[] paths)
    {
        var check = CheckContent.Check(paths);
        if (check.Problems.Count > 0) return report.Problems(check.Problems);
        foreach (var item in check.Items) report.Output.WriteLine($"{DisplayPath.Of(item.Path)}: fine");
        report.Output.WriteLine($"{check.Items.Count} checked, no problem found.");
        return ExitCode.Done;
    }
}
