using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Learning;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit learn</c></summary>
internal static class LearnCommand
{
    public static Command Create(Report report)
    {
        var proposals = new Argument<string>("PROPOSALS")
        {
            Description =
                "proposed-misconceptions.md, as you left it: those taken out that are not worth a word, the others in your own words.",
        };
        var exercises = new Argument<string[]>("EXERCISE")
        {
            Description = "The files of the exercises that they are for.",
            Arity = ArgumentArity.OneOrMore,
        };
        var to = CommonOptions.Out("the exercises with what they learned, to be put in the places of the old ones");
        var command = new Command(
            LearnMisconceptions.Kind,
            "Put misconceptions that a class met into their exercises, and prove these again."
        )
        {
            proposals,
            exercises,
            to,
        };
        command.SetAction(parsed =>
            Run(report, parsed.GetRequiredValue(proposals), parsed.GetRequiredValue(exercises), parsed.GetRequiredValue(to))
        );
        return command;
    }

    private static int Run(Report report, string proposals, string[] exercises, string to)
    {
        var library = Library.OfPaths();
        return report.Write(new(to, LearnMisconceptions.Kind, [proposals, .. exercises]), run =>
            Produced.Of(
                LearnMisconceptions.Run(new(library.At(proposals), [.. exercises.Select(library.At)]), run),
                LearnMisconceptions.Write
            )
        );
    }
}
