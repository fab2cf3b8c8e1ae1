using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Finds the answers that are right beyond doubt: plain arithmetic over the cells of givens, and of earlier answers of that kind, that
/// gives to the last digit what the key gives under every trial. Most answers of a class are of this kind, and of one that is nothing needs
/// to be tried in the workbook, for it can come to nothing else there.
/// </summary>
/// <param name="returned">What came back.</param>
/// <param name="inputs">The inputs of the trials, those dealt first.</param>
internal sealed class ExactAnswers(ReturnedExercise returned, IReadOnlyList<TrialInputs> inputs)
{
    private readonly List<(Part Part, double[] Values)> _found = [];

    /// <summary>Those found so far, with what they come to under every trial.</summary>
    public IReadOnlyList<(Part Part, double[] Values)> Found => _found;

    /// <summary>What an answer comes to under every trial; null for one that is not exact.</summary>
    public double[]? Of(Part part)
    {
        if (Plain(part) is not { } formula || Values(inputs, formula) is not { } values)
            return null;
        for (var trial = 0; trial < values.Length; trial++)
        {
            var right = inputs[trial].Right.Answers[part.Id];
            if (!Near.Computed.Same(right, values[trial]) || !part.Tolerance.Accepts(right, values[trial]))
                return null;
        }
        _found.Add((part, values));
        return values;
    }

    /// <summary>True if every part before one has an exact answer, with the very bits that the key gives.</summary>
    public bool AreAllBefore(Part part) =>
        inputs[0].Right.Exercise.Parts.TakeWhile(other => other != part).All(before => IsTheRightOne(before.Id));

    /// <summary>
    /// An answer over the names of the exercise that is plain arithmetic over givens and exact answers; null for any other.
    /// </summary>
    public CellFormula? Plain(Part part) =>
        returned.OfDealtCells(part) is { } formula
        && IsPlain(formula.Root)
        && formula.Names.All(name => IsGiven(name) || IsTheRightOne(name))
            ? formula
            : null;

    /// <summary>
    /// What a formula gives for every input where all before it is right; null if that is no number, or the same whatever is given, which
    /// shows no method.
    /// </summary>
    public static double[]? Values(IReadOnlyList<TrialInputs> inputs, CellFormula formula)
    {
        var values = new double[inputs.Count];
        for (var trial = 0; trial < values.Length; trial++)
        {
            if (inputs[trial].Number(formula) is not { } value)
                return null;
            values[trial] = value;
        }
        return Near.Computed.AllSame(values) ? null : values;
    }

    /// <summary>True for plain arithmetic.</summary>
    public static bool IsPlain(FormulaNode node) =>
        node
            is NumberNode
                or NameNode
                or GroupNode
                or PercentNode
                or PrefixNode { Operator: PrefixOperator.Plus or PrefixOperator.Minus }
                or BinaryNode { Operator: >= BinaryOperator.Power and <= BinaryOperator.Subtract }
        && node.Children().All(IsPlain);

    private bool IsGiven(string name) => inputs[0].Right.Exercise.Givens.Any(given => IsCalled(given.Id, name));

    /// <summary>
    /// True for an earlier answer whose cell holds the very bits that the key gives: others may differ from them by noise.
    /// </summary>
    private bool IsTheRightOne(string name)
    {
        foreach (var (part, values) in _found)
        {
            if (IsCalled(part.Id, name))
                return inputs.Select(input => input.Right.Answers[part.Id]).SequenceEqual(values);
        }
        return false;
    }

    private static bool IsCalled(string id, string name) => string.Equals(id, name, StringComparison.OrdinalIgnoreCase);
}
