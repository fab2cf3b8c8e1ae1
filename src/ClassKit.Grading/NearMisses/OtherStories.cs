using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.NearMisses.Places;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.NearMisses;

/// <summary>
/// Neighbours that give what another one gives only while earlier answers are right. Where part b is a third of part a, who began from part
/// a and who divided by three twice come to one number, and these are two stories: they are told apart by earlier answers that have nothing
/// to do with each other.
/// </summary>
internal sealed class OtherStories
{
    /// <summary>Two formulas that differ at all differ on each of them, but for chance.</summary>
    private const int Inputs = 3;

    private readonly IReadOnlyList<Part> _before;
    private readonly List<IReadOnlyDictionary<string, CellValue>> _shaken;
    private readonly Lazy<IReadOnlyList<Story>> _others;

    /// <param name="before">The parts before that ask for a number.</param>
    /// <param name="inputs">What tells behaviours apart.</param>
    /// <param name="right">The same as names, with right answers.</param>
    /// <param name="told">The neighbours that are told, one for each behaviour.</param>
    /// <param name="all">All neighbours.</param>
    /// <param name="columns">Works neighbours out on many inputs.</param>
    public OtherStories(
        IReadOnlyList<Part> before,
        IReadOnlyList<Variant> inputs,
        IReadOnlyList<IReadOnlyDictionary<string, CellValue>> right,
        IReadOnlyList<TriedNeighbour> told,
        Func<IReadOnlyList<Neighbour>> all,
        Func<IReadOnlyList<IReadOnlyDictionary<string, CellValue>>, NamedColumns> columns
    )
    {
        _before = before;
        _shaken = before.Count == 0 ? [] : [.. inputs.Take(Inputs).Select(Shaken)];
        _others = new(() => before.Count == 0 ? [] : Find(told, all(), columns(right), columns(_shaken)));
    }

    /// <summary>Those that are told of nobody, since another one gives the same.</summary>
    public IReadOnlyList<Neighbour> Untold => [.. _others.Value.Select(other => other.Neighbour)];

    /// <summary>
    /// Of a neighbour and those that give the same, the one that does what a formula does whatever the earlier answers are; itself where
    /// none does.
    /// </summary>
    /// <param name="formula">The formula over the exercise's names.</param>
    /// <param name="told">The neighbour.</param>
    public Neighbour Of(CellFormula formula, Neighbour told)
    {
        if (_before.Count == 0)
            return told;
        var columns = new NamedColumns(_shaken, SearchBudget.OneFormula);
        double[] values = [.. columns.Numbers(formula.Root)];
        if (values.Length == 0 || Near.Computed.Same(values, columns.Numbers(told.Root)))
            return told;
        return _others
            .Value.FirstOrDefault(other => ReferenceEquals(other.Told, told) && Near.Computed.Same(other.Shaken, values))
            ?.Neighbour
            ?? told;
    }

    private static List<Story> Find(
        IReadOnlyList<TriedNeighbour> told,
        IReadOnlyList<Neighbour> all,
        NamedColumns right,
        NamedColumns shaken
    )
    {
        List<Story> found = [];
        foreach (var neighbour in all.TakeWhile(_ => right.Spent <= SearchBudget.OneKey))
        {
            double[] values = [.. right.Numbers(neighbour.Root)],
                apart = [.. shaken.Numbers(neighbour.Root)];
            if (
                values.Length == 0
                || apart.Length == 0
                || told.FirstOrDefault(one => Near.Computed.Same(one.Values, values)) is not { Neighbour: var known }
            )
                continue;
            if (
                Near.Computed.Same(apart, shaken.Numbers(known.Root))
                || found.Exists(other => ReferenceEquals(other.Told, known) && Near.Computed.Same(other.Shaken, apart))
            )
                continue;
            found.Add(new(known, neighbour, apart));
        }
        return found;
    }

    private Dictionary<string, CellValue> Shaken(Variant variant, int input) =>
        KeyValues.Names(
            variant.Givens,
            _before.Select(
                (part, place) =>
                    KeyValuePair.Create(part.Id, variant.Answers[part.Id] * (1.07 + (0.13 * place) + (0.029 * input * (place + 1))))
            )
        );

    /// <param name="Told">The neighbour that gives the same.</param>
    /// <param name="Neighbour">The other one.</param>
    /// <param name="Shaken">What it gives on answers that have nothing to do with each other.</param>
    private sealed record Story(Neighbour Told, Neighbour Neighbour, double[] Shaken);
}
