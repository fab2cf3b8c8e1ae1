using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Skills;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit skills</c></summary>
internal static class SkillsCommand
{
    public static Command Create(Report report)
    {
        var graded = new Argument<string[]>("GRADED")
        {
            Description = "Folders that `classkit grade` made, of one class over time.",
            Arity = ArgumentArity.OneOrMore,
        };
        var on = CommonOptions.Day("--on", "The day of looking; that of the last work if left out.");
        var test = CommonOptions.Day("--wanted", "A day on which the skills are wanted: when to practise again is said then.");
        var before = new Option<string[]>("--last-year")
        {
            Description = "A folder that `classkit grade` made in an earlier year, to set beside this one; may be given several times.",
            HelpName = "DIR",
        };
        var to = CommonOptions.Out("a page of the class and one a student");
        var command = new Command(
            FollowSkills.Kind,
            "Follow what each student can do over several graded deals, recent work counting more."
        )
        {
            graded,
            on,
            test,
            before,
            to,
        };
        command.SetAction(parsed =>
            report.Write(
                new(parsed.GetRequiredValue(to), FollowSkills.Kind, [.. parsed.GetRequiredValue(graded), .. parsed.GetValue(before) ?? []]),
                run =>
                    Produced.Of(
                        FollowSkills.Read(
                            parsed.GetRequiredValue(graded),
                            parsed.GetValue(before) ?? [],
                            parsed.GetValue(on),
                            parsed.GetValue(test)
                        ),
                        request => FollowSkills.Write(FollowSkills.Run(request, run))
                    )
            )
        );
        return command;
    }
}
