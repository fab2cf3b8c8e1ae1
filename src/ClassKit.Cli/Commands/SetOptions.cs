using System.CommandLine;
using System.CommandLine.Parsing;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;
using ClassKit.UseCases.Dealing;

namespace ClassKit.Cli.Commands;

/// <summary>The options with which a set of exercises is chosen, for everyone or for each student.</summary>
internal sealed class SetOptions
{
    private readonly Option<string[]> _exercises = Many(
        "--exercise",
        "ID",
        "An exercise by name, of the lesson or of the practice folder beside it; repeat it for more."
    );
    private readonly Option<string[]> _skills = Many(
        "--skill",
        "SKILL",
        "Only exercises of this skill, such as \"dough temperature\"; repeat it for more."
    );
    private readonly Option<ExerciseLevel[]> _levels = new("--level")
    {
        Description = "Only exercises of this level: guided, standard or open; repeat it for more.",
        HelpName = "LEVEL",
        CustomParser = ParseLevels,
    };

    private readonly Option<int?> _minutes = CommonOptions.Amount(
        "--minutes",
        "Choose a set that takes at most so many minutes, and nearly."
    );
    private readonly Option<int?> _points = CommonOptions.Amount(
        "--points",
        "Choose a set that is worth at most so many points, and nearly."
    );

    private readonly Option<bool> _spread = new("--spread")
    {
        Description = "Different sets of equal weight for the students: the same points, skills and levels, and nearly the same minutes.",
    };

    /// <summary>Adds the options to a command that deals to a class.</summary>
    public void AddWithSpreadTo(Command command)
    {
        AddTo(command);
        command.Options.Add(_spread);
    }

    /// <summary>What was asked of a deal on the command line.</summary>
    public DealWish Wish(ParseResult parsed, ulong seed) => new(Wish(parsed), parsed.GetValue(_spread), seed);

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in (Option[])[_exercises, _skills, _levels, _minutes, _points])
            command.Options.Add(option);
    }

    /// <summary>What was asked on the command line.</summary>
    public SetWish Wish(ParseResult parsed) =>
        new(
            parsed.GetValue(_exercises) ?? [],
            parsed.GetValue(_skills) ?? [],
            parsed.GetValue(_levels) ?? [],
            parsed.GetValue(_minutes),
            parsed.GetValue(_points)
        );

    private static Option<string[]> Many(string name, string value, string description) =>
        new(name)
        {
            Description = description,
            HelpName = value,
            Arity = ArgumentArity.OneOrMore,
        };

    private static ExerciseLevel[] ParseLevels(ArgumentResult result)
    {
        var levels = new List<ExerciseLevel>();
        foreach (var token in result.Tokens)
        {
            if (
                Enum.TryParse<ExerciseLevel>(token.Value, ignoreCase: true, out var level)
                && Enum.IsDefined(level)
                && !char.IsAsciiDigit(token.Value[0])
            )
                levels.Add(level);
            else
                result.AddError($"--level takes guided, standard or open, not {token.Value}.");
        }
        return [.. levels];
    }
}
