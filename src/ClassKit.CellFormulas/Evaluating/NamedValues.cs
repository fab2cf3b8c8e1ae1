using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Evaluates many trees over the same names, as <see cref="NamedEvaluation"/> does one formula, and quicker. Not to be used from several threads at once.</summary>
public sealed class NamedValues
{
    private readonly Run _run;
    private readonly Interpreter _interpreter;

    /// <param name="names">What each name stands for, whatever its letter case.</param>
    /// <param name="steps">The most that one tree may take; past it it gives no number.</param>
    public NamedValues(IReadOnlyDictionary<string, CellValue> names, int steps = EvaluationLimits.DefaultSteps)
    {
        ArgumentNullException.ThrowIfNull(names);
        _run = new(EvaluationLimits.Default with { Steps = steps }, DateSystem.From1900);
        _interpreter = new(_run, new NoCells(_run), new GivenNames(_run, names));
    }

    /// <summary>How many steps all trees together have taken.</summary>
    public long Spent { get; private set; }

    /// <summary>The number that a tree gives, or null if it gives anything else.</summary>
    /// <param name="root">The tree.</param>
    public double? Number(FormulaNode root)
    {
        ArgumentNullException.ThrowIfNull(root);
        _run.Start(CancellationToken.None);
        _run.Meter.Reset(long.MaxValue);
        var value = _run.Within(() => _interpreter.Operand(root), CellError.Value);
        Spent += _run.Meter.Spent;
        return !_run.Halted && CellResult.Of(value) is { IsNumber: true, Number: var number } && double.IsFinite(number) ? number : null;
    }
}
