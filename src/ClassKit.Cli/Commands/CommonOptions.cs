using System.CommandLine;
using System.CommandLine.Parsing;

namespace ClassKit.Cli.Commands;

/// <summary>Arguments and options that several commands have.</summary>
internal static class CommonOptions
{
    public static Argument<string> Lesson() => new("LESSON") { Description = "The lesson's folder, such as lessons/one-tin-three-lifts." };

    public static Argument<string> LessonOrExercises() => new("LESSON") { Description = "The lesson's folder, or a folder of exercises such as lessons/practice; shipped:/lessons/practice is the one inside this program." };

    public static Option<string> Out(string what) => new("--out") { Description = $"The folder to write {what} to.", HelpName = "DIR", Required = true };

    public static Option<ulong> Seed(ulong usual) => new("--seed")
    {
        Description = "A whole number that decides every draw: the same seed deals the same workbooks.",
        HelpName = "N",
        DefaultValueFactory = _ => usual,
        CustomParser = ParseSeed,
    };

    /// <summary>A whole number above 0.</summary>
    public static Option<int?> Amount(string name, string description) => new(name) { Description = description, HelpName = "N", CustomParser = ParseAmount };

    private static ulong ParseSeed(ArgumentResult result)
    {
        if (result.Tokens is [{ Value: var text }] && ulong.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var seed))
            return seed;
        result.AddError($"--seed takes a whole number from 0 to {ulong.MaxValue}, such as --seed 42.");
        return 0;
    }

    private static int? ParseAmount(ArgumentResult result)
    {
        if (result.Tokens is [{ Value: var text }] && int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var amount) && amount is > 0 and <= 10_000)
            return amount;
        var option = ((OptionResult)result.Parent!).Option.Name;
        result.AddError($"{option} takes a whole number from 1 to 10000, such as {option} 45.");
        return null;
    }
}
