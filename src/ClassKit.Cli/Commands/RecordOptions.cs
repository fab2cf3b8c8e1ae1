using System.CommandLine;
using ClassKit.UseCases.Recording;

namespace ClassKit.Cli.Commands;

/// <summary>Options of all commands that have to do with the record, and the only place that asks the clock and who is at it.</summary>
internal static class RecordOptions
{
    public static Option<string> Record() =>
        new("--record")
        {
            Description = "The file of the record, or the teaching folder that it lies in.",
            HelpName = "PATH",
            Required = true,
        };

    public static Option<string?> By() =>
        new("--by")
        {
            Description = "Who is doing this, for the log of changes; the name that you are logged in by if left out.",
            HelpName = "NAME",
        };

    public static Option<string?> Why() => new("--why") { Description = "Why, for the log of changes.", HelpName = "TEXT" };

#pragma warning disable RS0030 // Here the time comes in.
    public static DateTimeOffset Now => DateTimeOffset.Now;
#pragma warning restore RS0030

    public static Author Author(ParseResult parsed, Option<string?> by, Option<string?> why) =>
        new(Now, parsed.GetValue(by) is { Length: > 0 } named ? named : Environment.UserName, parsed.GetValue(why) ?? "");
}
