using System.CommandLine;
using System.CommandLine.Parsing;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.Cli.Commands;

/// <summary>Arguments and options of the commands that grade.</summary>
internal static class GradingOptions
{
    public static Argument<string> Dealt() => new("DEALT") { Description = "The folder that `classkit deal` made." };

    public static Option<string?> Returned() =>
        new("--returned")
        {
            Description = "The folder or zip with what came back; needed unless all answered on paper.",
            HelpName = "DIR-or-ZIP",
        };

    public static Option<string?> Paper() =>
        new("--paper")
        {
            Description = "The workbook of `classkit paper` with the answers typed in that students wrote on paper.",
            HelpName = "FILE",
        };

    /// <summary>There must be something to grade.</summary>
    public static void RequireWork(Command command, Option<string?> returned, Option<string?> paper) =>
        command.Validators.Add(result =>
        {
            if (result.GetValue(returned) is null && result.GetValue(paper) is null)
                result.AddError("Name what came back with --returned, or answers on paper with --paper.");
        });

    public static Option<DueWish?> Due() =>
        new("--due")
        {
            Description =
                "When the work was due, on the clocks of the class's time zone; later work is named, and costs what the marking scheme says. If not named, as on record in the earlier grades, else as dealt; none takes it off record.",
            HelpName = "YYYY-MM-DDTHH:MM",
            CustomParser = ParseDue,
        };

    public static Option<DueWish?> DueWhenDealt() =>
        new("--due")
        {
            Description =
                "When the work is due, on the clocks of the class's time zone: it stands on workbooks and sheets, and grading knows it.",
            HelpName = "YYYY-MM-DDTHH:MM",
            CustomParser = ParseDue,
        };

    public static Option<string?> Earlier() =>
        new("--earlier")
        {
            Description =
                "A folder of earlier grades: answers are judged on the same fresh inputs, and what the judge says otherwise is named. If not named, the grades in DIR that these replace.",
            HelpName = "DIR",
        };

    public static Option<string?> Class() =>
        new("--class") { Description = "The class profile, for its time zone, where the deal does not know it.", HelpName = "FILE" };

    private static DueWish? ParseDue(ArgumentResult result)
    {
        if (result.Tokens is [{ Value: var text }] && DueWish.Parse(text) is { } due)
            return due;
        result.AddError(
            "--due takes a day and a time on the class's clocks, such as --due 2026-11-20T17:00, or with an offset, such as --due 2026-11-20T17:00+01:00."
        );
        return null;
    }

    public static Option<bool> TakeOver() =>
        new("--take-over")
        {
            Description = "Put points that you typed into the gradebook into your corrections; without it they are only shown.",
        };

    public static Option<bool> Drop() =>
        new("--drop")
        {
            Description =
                "Let whoever was graded in DIR and has nothing among what is graded now be without a grade; without it they are named, and nothing is written.",
        };

    public static Option<string?> Corrections() =>
        new("--corrections")
        {
            Description =
                "Your own decisions on answers, a CSV file with student, part, points and reason; if not named, corrections.csv in the folder of grades.",
            HelpName = "FILE",
        };
}
