using System.CommandLine;
using System.Globalization;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Skills;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit skills</c></summary>
internal static class SkillsCommand
{
    public static Command Create(Report report)
    {
        var graded = new Argument<string[]>("GRADED") { Description = "Folders that `classkit grade` made, of one class over time.", Arity = ArgumentArity.OneOrMore };
        var on = Day("--on", "The day of looking; that of the last work if left out.");
        var test = Day("--wanted", "A day on which the skills are wanted: when to practise again is said then.");
        var to = CommonOptions.Out("a page of the class and one a student");
        var command = new Command(FollowSkills.Kind, "Follow what each student can do over several graded deals, recent work counting more.") { graded, on, test, to };
        command.SetAction(parsed => report.Write(
            new(parsed.GetRequiredValue(to), FollowSkills.Kind, [.. parsed.GetRequiredValue(graded)]),
            run => Produced.Of(FollowSkills.Read(parsed.GetRequiredValue(graded), parsed.GetValue(on), parsed.GetValue(test)), request => FollowSkills.Write(FollowSkills.Run(request, run)))));
        return command;
    }

    private static Option<DateOnly?> Day(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "YYYY-MM-DD",
        CustomParser = result =>
        {
            if (DateOnly.TryParseExact(result.Tokens[0].Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
            result.AddError($"{name} takes a day such as 2026-11-20.");
            return null;
        },
    };
}
