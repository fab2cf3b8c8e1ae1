using System.CommandLine;
using ClassKit.Content.Diagnostics;
using ClassKit.Terms.Difficulty;
using ClassKit.UseCases.Difficulty;
using ClassKit.UseCases.Recording;

namespace ClassKit.Cli.Commands;

/// <summary>The options that name the answers of earlier classes.</summary>
internal sealed class PastOptions
{
    private readonly Option<string?> _record = new("--record")
    {
        Description = "The file of the record, or the teaching folder that it lies in: what earlier classes earned.",
        HelpName = "PATH",
    };
    private readonly Option<string[]> _graded = new("--graded")
    {
        Description = "A folder that `classkit grade` made, for the same; repeat it for more.",
        HelpName = "DIR",
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        command.Options.Add(_record);
        command.Options.Add(_graded);
    }

    /// <summary>What was named on the command line.</summary>
    public PastPaths Paths(ParseResult parsed) => new(parsed.GetValue(_record), parsed.GetValue(_graded) ?? [], RecordOptions.Now);

    /// <summary>What reads them; null where nothing was named.</summary>
    public Func<Reading<PastDifficulty>>? Reader(ParseResult parsed) => Paths(parsed) is { IsNone: false } paths ? paths.Read : null;

    /// <summary>Everything that will be read.</summary>
    public IEnumerable<string?> Inputs(ParseResult parsed) =>
        [parsed.GetValue(_record) is { } record ? RecordPlace.Of(record) : null, .. parsed.GetValue(_graded) ?? []];
}
