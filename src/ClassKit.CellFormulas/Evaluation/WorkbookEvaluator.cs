using ClassKit.CellFormulas.Evaluating;

namespace ClassKit.CellFormulas;

/// <summary>Recomputes cells of a workbook from its formulas, with other inputs if wanted, without changing it.</summary>
/// <remarks>
/// Each formula is parsed once for the life of the evaluator, each cell computed at most once a call. Stored values of formula cells are never used.
/// Safe to use from several threads.
/// </remarks>
public sealed class WorkbookEvaluator
{
    private static readonly Dictionary<CellAddress, CellValue> Nothing = [];

    private readonly PreparedWorkbook _workbook;
    private readonly EvaluationLimits _limits;

    /// <summary>Prepares a workbook.</summary>
    /// <param name="workbook">The workbook as read.</param>
    /// <param name="limits">How much work one evaluation may do; <see cref="EvaluationLimits.Default"/> if null.</param>
    public WorkbookEvaluator(WorkbookSnapshot workbook, EvaluationLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        _workbook = new(workbook);
        _limits = limits ?? EvaluationLimits.Default;
    }

    /// <summary>The value of one cell. A cell without a formula has its stored value, an empty one is blank.</summary>
    /// <param name="cell">Which cell.</param>
    /// <param name="replaced">Values to use for some cells in place of what they hold, a formula included.</param>
    /// <param name="cancellation">Ends the evaluation early.</param>
    /// <returns>The value with the cells it was computed from. A formula that depends on itself has the value <c>#REF!</c>, and so has every cell of the circle,
    /// with the circle named in <see cref="Evaluation.Reason"/>. A formula that is none is unsupported.</returns>
    /// <exception cref="OperationCanceledException"><paramref name="cancellation"/> was cancelled.</exception>
    public Evaluation Evaluate(
        CellAddress cell, IReadOnlyDictionary<CellAddress, CellValue>? replaced = null, CancellationToken cancellation = default)
    {
        var sheet = _workbook.FindSheet(cell.Sheet);
        if (sheet < 0)
            return new(EvaluationStatus.Computed, CellValue.FromError(CellError.Reference), $"there is no sheet called {cell.Sheet}", []);
        var interpreter = new WorkbookInterpreter(_workbook, _limits, replaced ?? Nothing, cancellation);
        return interpreter.Evaluate(new(sheet, cell.Row, cell.Column));
    }
}
