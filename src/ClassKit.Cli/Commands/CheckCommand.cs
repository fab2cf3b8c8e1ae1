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
        var problems = CheckContent.Check(paths);
        if (problems.Count > 0) return report.Problems(problems);
        report.Output.WriteLine($"No problem found in {string.Join(", ", paths)}.");
        return ExitCode.Done;
    }
}
