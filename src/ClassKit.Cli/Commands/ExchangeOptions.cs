using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace ClassKit.Cli.Commands;

/// <summary>What the commands ask for that write tables for a school's records.</summary>
internal static class ExchangeOptions
{
    /// <summary>A name of something in the school's own records.</summary>
    public static Option<string> Id(string name, string what) =>
        new(name)
        {
            Description = $"The school's id (sourcedId) of the {what}.",
            HelpName = "ID",
            Required = true,
        };

    /// <summary>A day, as the standard writes it.</summary>
    public static Option<DateOnly> Day(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "YYYY-MM-DD",
            Required = true,
            CustomParser = result => Parse(name, result),
        };

    private static DateOnly Parse(string name, ArgumentResult result)
    {
        if (
            result.Tokens is [{ Value: var text }]
            && DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
        )
            return day;
        result.AddError($"{name} takes a day as YYYY-MM-DD, such as {name} 2026-11-25.");
        return default;
    }
}
