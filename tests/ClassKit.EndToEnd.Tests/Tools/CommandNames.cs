using System.Text.RegularExpressions;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>
/// The commands that there are, as the program's own help lists them: a list in a test can be held against it, so that a new command is not
/// forgotten.
/// </summary>
internal static partial class CommandNames
{
    /// <summary>Every command.</summary>
    public static IReadOnlyList<string> All { get; } =
    [.. Command().Matches(ClassKitRun.Of("--help").Done().Output.Split("Commands:")[1]).Select(match => match.Groups["name"].Value)];

    /// <summary>Those that must be told the folder to write into; the tour, which need not, among them.</summary>
    public static IReadOnlyList<string> Writing { get; } =
    [.. All.Where(name => ClassKitRun.Of(name, "--help").Done().Output.Contains("--out ", StringComparison.Ordinal))];

    [GeneratedRegex(@"^  (?<name>[a-z][a-z-]*)(?: |$)", RegexOptions.Multiline)]
    private static partial Regex Command();
}
