using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace ClassKit.Cli.Commands;

/// <summary>Arguments and options of the commands that grade.</summary>
internal static class GradingOptions
{
    public static Argument<string> Dealt() => new("DEALT") { Description = "The folder that `classkit deal` made." };

    public static Option<string> Returned() => new("--returned") { Description = "The folder or zip with what came back.", HelpName = "DIR-or-ZIP", Required = true };

    public static Option<DateTimeOffset?> Due() => new("--due")
    {
        Description = "When the work was due; later work is named, and costs what the marking scheme says. Without an offset such as +01:00 the time is UTC.",
        HelpName = "YYYY-MM-DDTHH:MM",
        CustomParser = ParseDue,
    };

    private static DateTimeOffset? ParseDue(ArgumentResult result)
    {
        if (result.Tokens is [{ Value: var text }] && DateTimeOffset.TryParseExact(text, ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mmzzz"], CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var due))
            return due;
        result.AddError("--due takes a day and a time, such as --due 2026-11-20T17:00 or --due 2026-11-20T17:00+01:00.");
        return null;
    }

    public static Option<string?> Corrections() => new("--corrections")
    {
        Description = "Your own decisions on answers, a CSV file with student, part, points and reason; if not named, corrections.csv in the folder of grades.",
        HelpName = "FILE",
    };
}
