using System.CommandLine;

namespace ClassKit.Cli.Commands;

/// <summary>Arguments and options of the commands that grade.</summary>
internal static class GradingOptions
{
    public static Argument<string> Dealt() => new("DEALT") { Description = "The folder that `classkit deal` made." };

    public static Option<string> Returned() => new("--returned") { Description = "The folder or zip with what came back.", HelpName = "DIR-or-ZIP", Required = true };

    public static Option<string?> Corrections() => new("--corrections")
    {
        Description = "Your own decisions on answers, a CSV file with student, part, points and reason; if not named, corrections.csv in the folder of grades.",
        HelpName = "FILE",
    };
}
