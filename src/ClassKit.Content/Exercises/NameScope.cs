using System.Globalization;
using ClassKit.CellFormulas.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>
/// The names that a formula may use at its place in the file, and those that come too late for it; and on what lines all that has a name
/// stands.
/// </summary>
internal sealed class NameScope
{
    private readonly Dictionary<string, int> _known = [];
    private readonly Dictionary<string, int> _later = [];
    private readonly Dictionary<string, CellFormula> _steps = [];
    private readonly Dictionary<string, (int Line, string How)> _uncomputed = [];
    private OptionList? _options;

    /// <summary>Every name usable so far.</summary>
    public IReadOnlyCollection<string> Known => _known.Keys;

    /// <summary>Where what was read so far stands.</summary>
    public ExercisePlaces Places { get; } = new();

    /// <summary>False once names could not be read: then an unknown one may be one of those, and is let pass.</summary>
    public bool IsWhole { get; set; } = true;

    /// <summary>Tells of a part that is asked somewhere in the file, so that a use before its time can be explained.</summary>
    public void Announce(string name, int line) => _later.TryAdd(name, line);

    /// <summary>Makes a name usable from here on; noted if it cannot be a name or is taken.</summary>
    public void Add(Located name, string what, ProblemList problems)
    {
        if (!Naming.IsValid(name.Text))
        {
            problems.Add(
                name.Line,
                $"`{name.Text}` cannot be the name of a {what}",
                $"Use {Naming.Rule}{(Suggestion(name.Text) is { } other ? $"; `{other}` would do" : "")}."
            );
            IsWhole = false;
            return;
        }
        if (!_known.TryAdd(name.Text, name.Line))
            problems.Add(
                name.Line,
                $"The name `{name.Text}` is taken by line {_known[name.Text]}",
                "Choose another: givens and parts of an exercise share their names."
            );
    }

    /// <summary>Makes a step usable from here on.</summary>
    public void AddStep(Located name, CellFormula key, ProblemList problems)
    {
        var worked = WorkedIn(key);
        Add(name, "step", problems);
        _steps.TryAdd(name.Text, worked);
    }

    /// <summary>True for a name of a given, a step or a part, wherever it stands in the file.</summary>
    public bool IsTaken(string name) => _known.ContainsKey(name) || _later.ContainsKey(name);

    /// <summary>From here on formulas may name these options, and no others; null for none.</summary>
    public void Offer(OptionList? options) => _options = options;

    /// <summary>Takes the name of a part whose answer no formula can use: one that is answered with a letter or in words.</summary>
    public void AddUncomputed(Located name, string how, ProblemList problems)
    {
        Add(name, "part", problems);
        _uncomputed.TryAdd(name.Text, (name.Line, how));
    }

    /// <summary>
    /// The formula over givens and parts alone: each step in it replaced by how it is worked out, each option by its number.
    /// </summary>
    public CellFormula WorkedIn(CellFormula written) =>
        NeedsWork(written)
            ? written.ReplaceNames(name =>
                _steps.TryGetValue(name, out var step)
                    ? step.ToString()[1..]
                    : _options?.NumberOf(name)?.ToString(CultureInfo.InvariantCulture)
            )
            : written;

    /// <summary>The formula if it uses steps or options, else null.</summary>
    public CellFormula? AsWritten(CellFormula written) => NeedsWork(written) ? written : null;

    private bool NeedsWork(CellFormula formula) =>
        formula.Names.Any(name => _steps.ContainsKey(name) || _options?.NumberOf(name) is not null);

    /// <summary>A valid name near to the one written, or null.</summary>
    private static string? Suggestion(string written)
    {
        // What stands behind a comma tells of the part and does not name it.
        var plain = string.Concat(
                written
                    .Split(',', '(', ';')[0]
                    .Trim()
                    .ToLowerInvariant()
                    .Select(character => char.IsAsciiLetterOrDigit(character) ? character : '_')
            )
            .Trim('_');
        if (Naming.IsValid(plain))
            return plain;
        var digits = plain.IndexOfAny([.. "0123456789"]);
        return digits > 0 && Naming.IsValid(plain.Insert(digits, "_")) ? plain.Insert(digits, "_") : null;
    }

    /// <summary>Notes the name if a formula may not use it.</summary>
    public void Check(string name, int line, string what, ProblemList problems)
    {
        if (_uncomputed.TryGetValue(name, out var answered))
            problems.Add(
                line,
                $"{what} uses `{name}`, which is answered {answered.How} in line {answered.Line}",
                "Compute with givens and with parts that are answered with a number."
            );
        if (_known.ContainsKey(name) || _options?.NumberOf(name) is not null)
            return;
        if (_later.TryGetValue(name, out var asked))
            problems.Add(
                line,
                $"{what} uses `{name}`, which is not answered before it",
                $"`{name}` is asked in line {asked}: a key may use givens and earlier parts only. Change the key or the order of the parts."
            );
        else if (IsWhole && name is "x" or "X")
            problems.Add(
                line,
                $"{what} uses `{name}`, which is neither a given nor an earlier part",
                "If it is meant for times, write `*`."
            );
        else if (IsWhole)
            problems.Add(
                line,
                $"{what} uses `{name}`, which is neither a given nor an earlier part",
                NearestWord.Advice(name, [.. _known.Keys, .. _options?.Options.Select(option => option.Id) ?? []])
            );
    }
}
