using System.Collections.Concurrent;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.NearMisses.Families;
using ClassKit.Grading.NearMisses.Places;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.NearMisses;

/// <summary>
/// The wrong formulas near a part's key, one for each behaviour: found once for a class, and looked up for every answer of it.
/// </summary>
/// <remarks>
/// Which they are hangs on the exercise and the inputs drawn for the class alone, so that a class is judged alike in whatever order its
/// work comes in.
/// </remarks>
internal sealed class NeighbourTable
{
    /// <summary>No shipped key has half as many; a long one of somebody's own keeps the likelier.</summary>
    private const int Most = 600;

    /// <summary>In a class of thousands who write no two formulas alike, those that come later are tried by themselves.</summary>
    private const int MostFormulas = 500;

    private readonly FormulaNode _shape;
    private readonly ConcurrentDictionary<string, TriedFormula> _formulas = new(StringComparer.Ordinal);
    private readonly Lazy<SecondEdits> _two;
    private readonly Lazy<OtherStories> _others;

    /// <param name="exercise">The exercise.</param>
    /// <param name="part">One of its parts that asks for a number.</param>
    /// <param name="inputs">What tells behaviours apart: inputs of the exercise, of which there is at least one.</param>
    /// <param name="rules">The judge's.</param>
    /// <param name="keepsHidden">True to keep those that stay within the part's tolerance throughout, of which no answer can be judged
    /// wrong.</param>
    public NeighbourTable(Exercise exercise, Part part, IReadOnlyList<Variant> inputs, JudgeRules rules, bool keepsHidden = false)
    {
        (Part, IsApart, IsOfTheMethod, _shape) = (part, rules.Apart, rules.OfTheMethod, part.Key.Shape);
        Inputs = [.. inputs.Select(variant => KeyValues.Names(variant.Givens, variant.Answers))];
        var sheet = new Sheet(SheetQuantity.Before(exercise, part));
        var behaviours = new BehaviourSet(inputs);
        behaviours.LeaveOut([.. inputs.Select(variant => (double?)variant.Answers[part.Id])], keepsHidden ? null : rules.ToleranceOf(part));
        foreach (var misconception in part.Misconceptions)
            behaviours.LeaveOut([.. Inputs.Select(names => KeyValues.Number(misconception.Formula, names))], null);
        List<Neighbour> All() =>
            [.. Neighbours.Of(_shape, sheet, keepsAll: !IsOfTheMethod).Take(Most), .. rules.Powers ? PowerEdits.Of(_shape) : []];
        Tried = [.. behaviours.Distinct(All(), Columns(Inputs))];
        One = [.. Tried.Select(tried => tried.Neighbour)];
        _two = new(() => new(One, sheet, inputs[0], Inputs[0], keepsAll: !IsOfTheMethod));
        _others = new(() =>
            new(
                rules.Apart ? [.. exercise.Parts.TakeWhile(other => other != part).Where(other => other.IsNumber)] : [],
                inputs,
                Inputs,
                Tried,
                All,
                Columns
            )
        );
    }

    /// <summary>The part.</summary>
    public Part Part { get; }

    /// <summary>True if ways that come to the same are told apart by what stands in them.</summary>
    public bool IsApart { get; }

    /// <summary>True if a near miss must have something of the method, and be no cell pointed at.</summary>
    public bool IsOfTheMethod { get; }

    /// <summary>Those that are one edit away and no listed misconception, the likelier first.</summary>
    public IReadOnlyList<Neighbour> One { get; }

    /// <summary>The same with what they give on <see cref="Inputs"/>.</summary>
    public IReadOnlyList<TriedNeighbour> Tried { get; }

    /// <summary>What names stand for on each of the inputs that tell behaviours apart, with right answers.</summary>
    public IReadOnlyList<IReadOnlyDictionary<string, CellValue>> Inputs { get; }

    /// <summary>Those that are two edits away; made when first needed.</summary>
    public SecondEdits Two => _two.Value;

    /// <summary>
    /// Those that give the same as one of <see cref="One"/> only while earlier answers are right; made when first needed.
    /// </summary>
    public OtherStories Others => _others.Value;

    /// <summary>What the neighbours give for some names; null where that is no number.</summary>
    public IReadOnlyList<double?> Values(IReadOnlyDictionary<string, CellValue> names) => Values(One, names);

    /// <summary>The same of some of them.</summary>
    public IReadOnlyList<double?> Values(IEnumerable<Neighbour> neighbours, IReadOnlyDictionary<string, CellValue> names)
    {
        var columns = Columns([names]);
        return [.. neighbours.Select(neighbour => columns.Numbers(neighbour.Root) is [var value] ? value : (double?)null)];
    }

    /// <summary>
    /// What a student's formula does on <see cref="Inputs"/>: students go wrong together, so that it is found once for all who wrote the
    /// same.
    /// </summary>
    /// <param name="formula">The formula over the exercise's names.</param>
    public TriedFormula Try(CellFormula formula)
    {
        if (_formulas.TryGetValue(formula.Text, out var known))
            return known;
        var tried = new TriedFormula(this, formula);
        return _formulas.Count < MostFormulas ? _formulas.GetOrAdd(formula.Text, tried) : tried;
    }

    /// <summary>The neighbours have most of the key in common.</summary>
    private NamedColumns Columns(IReadOnlyList<IReadOnlyDictionary<string, CellValue>> inputs)
    {
        var columns = new NamedColumns(inputs, SearchBudget.OneFormula);
        columns.Keep(_shape);
        return columns;
    }
}
