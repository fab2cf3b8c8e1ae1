using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// Evaluates many trees over the same names, as <see cref="NamedEvaluation"/> does one formula, and quicker. Not to be used from several
/// threads at once.
/// </summary>
public sealed class NamedValues
{
    private readonly IReadOnlyDictionary<string, CellValue> _names;
    private readonly int _steps;
    private (Run Run, Interpreter Interpreter)? _interpreter;

    /// <param name="names">What each name stands for, whatever its letter case.</param>
    /// <param name="steps">The most that one tree may take; past it it gives no number.</param>
    public NamedValues(IReadOnlyDictionary<string, CellValue> names, int steps = EvaluationLimits.DefaultSteps)
    {
        ArgumentNullException.ThrowIfNull(names);
        (_names, _steps) = (names, steps);
    }

    /// <summary>How many steps all trees together have taken.</summary>
    public long Spent { get; private set; }

    /// <summary>The number that a tree gives, or null if it gives anything else.</summary>
    /// <param name="root">The tree.</param>
    public double? Number(FormulaNode root)
    {
        ArgumentNullException.ThrowIfNull(root);
        var steps = 0;
        if (PlainArithmetic.Number(root, _names, ref steps) is not { } number)
            return Interpreted(root);
        Spent += steps;
        return steps <= _steps ? number : null;
    }

    private double? Interpreted(FormulaNode root)
    {
        var (run, interpreter) = _interpreter ??= Interpreting();
        run.Start(CancellationToken.None);
        run.Meter.Reset(long.MaxValue);
        var value = run.Within(() => interpreter.Operand(root), CellError.Value);
        Spent += run.Meter.Spent;
        return !run.Halted && CellResult.Of(value) is { IsNumber: true, Number: var number } && double.IsFinite(number) ? number : null;
    }

    private (Run Run, Interpreter Interpreter) Interpreting()
    {
        var run = new Run(EvaluationLimits.Default with { Steps = _steps }, DateSystem.From1900);
        return (run, new(run, new NoCells(run), new GivenNames(run, _names)));
    }
}
