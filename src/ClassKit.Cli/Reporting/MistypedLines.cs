using System.CommandLine;
using System.CommandLine.Parsing;
using ClassKit.Content.Wording;

namespace ClassKit.Cli.Reporting;

/// <summary>What is wrong with a command line as it was typed, and what was most likely meant.</summary>
internal static class MistypedLines
{
    /// <summary>More than a few are no help.</summary>
    private const int Most = 3;

    /// <summary>The lines, the last of which says where more is told; none where nothing is wrong.</summary>
    /// <param name="parsed">The arguments as they were understood.</param>
    /// <param name="typed">The arguments.</param>
    public static IReadOnlyList<string> Of(ParseResult parsed, IReadOnlyList<string> typed)
    {
        var command = parsed.CommandResult.Command;
        List<string> faults = [.. Faults(parsed, command, typed)];
        return faults.Count == 0 ? [] : [.. faults, $"See `classkit {(command is RootCommand ? "" : command.Name + " ")}--help`."];
    }

    /// <summary>
    /// Names that nobody knows, or what the parser says: with a name mistyped, it takes what follows for something else and complains of that.
    /// </summary>
    private static IEnumerable<string> Faults(ParseResult parsed, Command command, IReadOnlyList<string> typed)
    {
        if (command is RootCommand && parsed.UnmatchedTokens is [var word, ..] && !word.StartsWith('-'))
            return [$"There is no command `{word}`.{Meant(word, [.. command.Subcommands.Select(known => known.Name)])}"];
        var options = UnknownOptions(parsed, command, typed).ToList();
        return options.Count > 0 ? options
            : parsed.Errors.Count > 0 && command is RootCommand ? ["Say which command, such as `classkit tour`."]
            : parsed.Errors.Select(error => error.Message);
    }

    private static IEnumerable<string> UnknownOptions(ParseResult parsed, Command command, IReadOnlyList<string> typed)
    {
        List<string> known =
        [
            .. command
                .Options.Concat(command.Parents.OfType<Command>().SelectMany(parent => parent.Options.Where(option => option.Recursive)))
                .SelectMany(option => option.Aliases.Append(option.Name))
                .Where(name => name.StartsWith("--", StringComparison.Ordinal)),
        ];
        return typed
            .TakeWhile(word => word != "--")
            .Where(word => word.StartsWith("--", StringComparison.Ordinal))
            .Select(word => word.Split('=', ':')[0])
            .Distinct()
            .Where(name => !known.Contains(name, StringComparer.Ordinal) && !IsValue(parsed, name))
            .Select(name =>
                $"There is no option `{name}`{(command is RootCommand ? "" : $" of `classkit {command.Name}`")}.{Meant(name, known)}"
            );
    }

    /// <summary>True for what an option took: a folder may be called what it likes.</summary>
    private static bool IsValue(ParseResult parsed, string name) =>
        parsed.CommandResult.Children.OfType<OptionResult>().Any(option => option.Tokens.Any(token => token.Value == name));

    /// <summary>As a sentence behind another; nothing where nothing is near.</summary>
    private static string Meant(string typed, IReadOnlyList<string> known)
    {
        var near = NearestWord.AllTo(typed, known, Most);
        if (near.Count == 0)
            near = [.. known.Where(name => typed.Length > 2 && name.StartsWith(typed, StringComparison.OrdinalIgnoreCase)).Take(Most)];
        return near.Count == 0 ? "" : $" Did you mean {string.Join(" or ", near.Select(name => $"`{name}`"))}?";
    }
}
