using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Evaluates formulas over names alone, such as the key of an exercise over its givens.</summary>
public static class NamedEvaluation
{
    /// <summary>The value of a formula.</summary>
    /// <param name="formula">The formula; a reference to a cell in it gives <c>#REF!</c>.</param>
    /// <param name="names">What each name stands for, whatever its letter case; any other name gives <c>#NAME?</c>.</param>
    public static Evaluation Evaluate(CellFormula formula, IReadOnlyDictionary<string, CellValue> names)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(names);
        var steps = 0;
        if (PlainArithmetic.Number(formula.Root, names, ref steps) is { } number)
            return new(EvaluationStatus.Computed, CellValue.FromNumber(number), null, []);
        var run = new Run(EvaluationLimits.Default, DateSystem.From1900);
        var interpreter = new Interpreter(run, new NoCells(run), new GivenNames(run, names));
        run.Meter.Reset(long.MaxValue);
        var value = run.Within(() => interpreter.Operand(formula.Root), CellError.Value);
        if (run.Halted)
            return new(run.Status, CellValue.Blank, run.Reason, []);
        var cell = CellResult.Of(value);
        return new(EvaluationStatus.Computed, cell, cell.IsError ? run.Reason : null, []);
    }
}
