using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Practising;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit follow-up</c></summary>
internal static class FollowUpCommand
{
    public static Command Create(Report report)
    {
        var dealt = new Argument<string>("DEALT") { Description = "The folder that `classkit deal` made." };
        var graded = new Option<string>("--graded")
        {
            Description = "The folder that `classkit grade` made of it.",
            HelpName = "DIR",
            Required = true,
        };
        var from = new Option<string?>("--from")
        {
            Description = "A folder of exercises to draw from as well, such as lessons/practice.",
            HelpName = "DIR",
        };
        var students = new Option<string[]>("--student")
        {
            Description = "Only for this student, by id; repeat it for more.",
            HelpName = "ID",
            Arity = ArgumentArity.OneOrMore,
        };
        var minutes = CommonOptions.Amount("--minutes", $"How long it may take each student; {MakeFollowUp.DefaultMinutes} if not named.");
        var to = CommonOptions.Out("pages and workbooks");
        var seed = CommonOptions.Seed(DealPractice.DefaultSeed);
        var command = new Command(MakeFollowUp.Kind, "Make each student practice aimed at what they missed, with fresh numbers.")
        {
            dealt,
            graded,
            from,
            students,
            minutes,
            to,
            seed,
        };
        command.SetAction(parsed =>
            report.Write(
                new(
                    parsed.GetRequiredValue(to),
                    MakeFollowUp.Kind,
                    parsed.GetRequiredValue(dealt),
                    parsed.GetRequiredValue(graded),
                    parsed.GetValue(from)
                ),
                run =>
                    Produced.Of(
                        new FollowUpPaths(
                            parsed.GetRequiredValue(dealt),
                            parsed.GetRequiredValue(graded),
                            new(
                                parsed.GetValue(students) ?? [],
                                parsed.GetValue(minutes) ?? MakeFollowUp.DefaultMinutes,
                                parsed.GetValue(seed)
                            )
                        )
                        {
                            Pool = parsed.GetValue(from),
                            Into = parsed.GetRequiredValue(to),
                        }.Read(),
                        request => MakeFollowUp.Run(request, run),
                        FollowUpPaths.Write
                    )
            )
        );
        return command;
    }
}
