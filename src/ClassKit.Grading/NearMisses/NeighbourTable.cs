using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.NearMisses.Families;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses;

/// <summary>The wrong formulas near a part's key, one for each behaviour: found once for a class, and looked up for every answer of it.</summary>
/// <remarks>Which they are hangs on the exercise and the inputs drawn for the class alone, so that a class is judged alike in whatever order its work comes in.</remarks>
internal sealed class NeighbourTable
{
    /// <summary>No shipped key has half as many; a long one of somebody's own keeps the likelier.</summary>
    private const int Most = 600;

    private readonly Part _part;
    private readonly IReadOnlyList<IReadOnlyDictionary<string, CellValue>> _inputs;
    private readonly Lazy<SecondEdits> _two;

    /// <param name="exercise">The exercise.</param>
    /// <param name="part">One of its parts that asks for a number.</param>
    /// <param name="inputs">What tells behaviours apart: inputs of the exercise, of which there is at least one.</param>
    /// <param name="keepsHidden">True to keep those that stay within the part's tolerance throughout, of which no answer can be judged wrong.</param>
    /// <param name="powers">True for those about powers too, which were looked for later than all others.</param>
    public NeighbourTable(Exercise exercise, Part part, IReadOnlyList<Variant> inputs, bool keepsHidden = false, bool powers = true)
    {
        _part = part;
        _inputs = [.. inputs.Select(variant => KeyValues.Names(variant.Givens, variant.Answers))];
        var sheet = SheetQuantity.Before(exercise, part);
        var behaviours = new BehaviourSet(inputs);
        behaviours.Leave([.. inputs.Select(variant => (double?)variant.Answers[part.Id])], keepsHidden ? null : part.Tolerance);
        foreach (var misconception in part.Misconceptions) behaviours.Leave([.. _inputs.Select(names => KeyValues.Number(misconception.Formula, names))], null);
        One = [.. behaviours.Distinct([.. Neighbours.Of(part.Key.Shape, sheet).Take(Most), .. powers ? PowerEdits.Of(part.Key.Shape) : []], _inputs)];
        _two = new(() => new(One, sheet, inputs[0], _inputs[0]));
    }

    /// <summary>Those that are one edit away and no listed misconception, the likelier first.</summary>
    public IReadOnlyList<Neighbour> One { get; }

    /// <summary>What names stand for on each of the inputs that tell behaviours apart, with right answers.</summary>
    public IReadOnlyList<IReadOnlyDictionary<string, CellValue>> Inputs => _inputs;

    /// <summary>Those that are two edits away; made when first needed.</summary>
    public SecondEdits Two => _two.Value;

    /// <summary>What a neighbour gives for some names.</summary>
    public static IReadOnlyList<double?> Values(IReadOnlyList<Neighbour> neighbours, IReadOnlyDictionary<string, CellValue> names)
    {
        var values = new NamedValues(names, SearchBudget.OneFormula);
        return [.. neighbours.Select(neighbour => values.Number(neighbour.Root))];
    }

    /// <summary>The part.</summary>
    public Part Part => _part;
}
