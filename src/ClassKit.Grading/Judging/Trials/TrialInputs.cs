using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>
/// Inputs that workbooks are tried with, and what is right on them. Fresh ones serve the whole class, so that nothing is worked out on them
/// twice.
/// </summary>
/// <param name="right">The inputs and what the keys make of them.</param>
internal sealed class TrialInputs(Variant right)
{
    private IReadOnlyDictionary<string, CellValue>? _names;

    /// <summary>The inputs and what the keys make of them.</summary>
    public Variant Right => right;

    /// <summary>What the names of the exercise stand for where every answer is right.</summary>
    public IReadOnlyDictionary<string, CellValue> Names => _names ??= KeyValues.Names(right.Givens, right.Answers);

    /// <summary>What a formula of the exercise gives where every answer is right; null if that is no number.</summary>
    public double? Number(CellFormula formula) => new NamedValues(Names).Number(formula.Root);
}
