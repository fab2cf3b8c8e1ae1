using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace ClassKit.Cli.Commands;

/// <summary>Arguments and options that several commands have.</summary>
internal static class CommonOptions
{
    public static Argument<string> Lesson() => new("LESSON") { Description = "The lesson's folder, such as lessons/one-tin-three-lifts." };

    public static Argument<string> LessonOrExercises() =>
        new("LESSON")
        {
            Description =
                "The lesson's folder, or a folder of exercises such as lessons/practice; shipped:/lessons/practice is the one inside this program.",
        };

    public static Option<string> Out(string what) =>
        new("--out")
        {
            Description = $"The folder to write {what} to.",
            HelpName = "DIR",
            Required = true,
        };

    public static Option<ulong> Seed(ulong usual) =>
        new("--seed")
        {
            Description = "A whole number that decides every draw: the same seed deals the same workbooks.",
            HelpName = "N",
            DefaultValueFactory = _ => usual,
            CustomParser = ParseSeed,
        };

    /// <summary>A whole number above 0.</summary>
    public static Option<int?> Amount(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "N",
            CustomParser = ParseAmount,
        };

    /// <summary>A day of the calendar.</summary>
    public static Option<DateOnly?> Day(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "YYYY-MM-DD",
            CustomParser = result =>
            {
                if (
                    DateOnly.TryParseExact(
                        result.Tokens[0].Value,
                        "yyyy-MM-dd",
                        CultureInfo.InvariantCulture,
                        DateTimeStyles.None,
                        out var day
                    )
                )
                    return day;
                result.AddError($"{name} takes a day such as 2026-11-20.");
                return null;
            },
        };

    private static ulong ParseSeed(ArgumentResult result)
    {
        if (result.Tokens is [{ Value: var text }] && ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var seed))
            return seed;
        result.AddError($"--seed takes a whole number from 0 to {ulong.MaxValue}, such as --seed 42.");
        return 0;
    }

    private static int? ParseAmount(ArgumentResult result)
    {
        if (
            result.Tokens is [{ Value: var text }]
            && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var amount)
            && amount is > 0 and <= 10_000
        )
            return amount;
        var option = ((OptionResult)result.Parent!).Option.Name;
        result.AddError($"{option} takes a whole number from 1 to 10000, such as {option} 45.");
        return null;
    }
}
