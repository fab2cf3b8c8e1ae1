using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Recomputes cells of a workbook from its formulas, with other inputs if wanted, without changing it.</summary>
/// <remarks>
/// Each formula is parsed once for the life of the evaluator, each cell computed at most once a call. Stored values of formula cells are
/// never used. Safe to use from several threads.
/// </remarks>
public sealed class WorkbookEvaluator
{
    private readonly PreparedWorkbook _workbook;
    private readonly EvaluationLimits _limits;
    private WorkbookInterpreter? _idle;
    private long _spent;

    /// <summary>Prepares a workbook.</summary>
    /// <param name="workbook">The workbook as read.</param>
    /// <param name="limits">How much work one evaluation may do; <see cref="EvaluationLimits.Default"/> if null.</param>
    /// <param name="parses">Parses shared with the evaluators of workbooks in which the same is written; null for parses of its
    /// own.</param>
    public WorkbookEvaluator(WorkbookSnapshot workbook, EvaluationLimits? limits = null, FormulaParses? parses = null)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        _workbook = new(workbook, parses);
        _limits = limits ?? EvaluationLimits.Default;
    }

    /// <summary>The value of one cell. A cell without a formula has its stored value, an empty one is blank.</summary>
    /// <param name="cell">Which cell.</param>
    /// <param name="replaced">Values to use for some cells in place of what they hold, a formula included.</param>
    /// <param name="cancellation">Ends the evaluation early.</param>
    /// <returns>The value with the cells it was computed from. A formula that depends on itself has the value <c>#REF!</c>, and so has
    /// every cell of the circle, with the circle named in <see cref="Evaluation.Reason"/>. A formula that is none is unsupported.</returns>
    /// <exception cref="OperationCanceledException"><paramref name="cancellation"/> was cancelled.</exception>
    public Evaluation Evaluate(
        CellAddress cell,
        IReadOnlyDictionary<CellAddress, CellValue>? replaced = null,
        CancellationToken cancellation = default
    )
    {
        var sheet = _workbook.FindSheet(cell.Sheet);
        if (sheet < 0)
            return NoSheet(cell);
        var interpreter = Take();
        interpreter.Begin(Replacements.Of(replaced), Left);
        var evaluation = interpreter.Evaluate(new(sheet, cell.Row, cell.Column), null, cancellation);
        PutBack(interpreter);
        return evaluation;
    }

    /// <summary>
    /// The values of several cells with the same inputs, as <see cref="Evaluate"/> gives them one by one, and quicker: what one cell needed
    /// is known for the next. Limits hold for each cell.
    /// </summary>
    /// <param name="cells">Which cells; each is computed before the next one is asked for.</param>
    /// <param name="replaced">Values to use for some cells in place of what they hold, a formula included.</param>
    /// <param name="cancellation">Ends the evaluation early.</param>
    /// <returns>One evaluation for each cell, in the same order.</returns>
    /// <exception cref="OperationCanceledException"><paramref name="cancellation"/> was cancelled.</exception>
    public IReadOnlyList<Evaluation> EvaluateAll(
        IEnumerable<CellAddress> cells,
        IReadOnlyDictionary<CellAddress, CellValue>? replaced = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(cells);
        var copied = Replacements.Copied(replaced, _workbook);
        var interpreter = Take();
        interpreter.Begin(copied, Left);
        var evaluations = new List<Evaluation>();
        foreach (var cell in cells)
        {
            var sheet = _workbook.FindSheet(cell.Sheet);
            evaluations.Add(
                sheet < 0
                    ? NoSheet(cell)
                    : interpreter.Evaluate(new(sheet, cell.Row, cell.Column), () => Dependencies(cell, copied), cancellation)
            );
        }

        PutBack(interpreter);
        return evaluations;
    }

    /// <summary>Prepares to compute cells on several inputs at once. The steps that this takes count with all others.</summary>
    /// <param name="count">How many inputs there are.</param>
    /// <param name="inputs">For some cells the numbers that take the place of what they hold, one for each input.</param>
    public WorkbookColumns OnEach(int count, IEnumerable<KeyValuePair<CellAddress, double[]>> inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        return new(_workbook, count, inputs, steps => Interlocked.Add(ref _spent, steps) <= _limits.LifeSteps);
    }

    private static Evaluation NoSheet(CellAddress cell) =>
        new(EvaluationStatus.Computed, CellValue.FromError(CellError.Reference), new Obstacle.NoSheet(cell.Sheet), []);

    /// <summary>What a cell depends on, found by computing it once more by itself.</summary>
    private IReadOnlyCollection<CellAddress> Dependencies(CellAddress cell, Replacements replaced)
    {
        var interpreter = new WorkbookInterpreter(_workbook, _limits);
        interpreter.Begin(replaced, Left);
        var evaluation = interpreter.Evaluate(new(_workbook.FindSheet(cell.Sheet), cell.Row, cell.Column), null, CancellationToken.None);
        Interlocked.Add(ref _spent, interpreter.Meter.Spent);
        return evaluation.Dependencies;
    }

    /// <summary>An interpreter used before, for its memory; another thread's call makes its own.</summary>
    private WorkbookInterpreter Take() => Interlocked.Exchange(ref _idle, null) ?? new(_workbook, _limits);

    private void PutBack(WorkbookInterpreter interpreter)
    {
        Interlocked.Add(ref _spent, interpreter.Meter.Spent);
        _idle = interpreter;
    }

    private long Left => _limits.LifeSteps - Interlocked.Read(ref _spent);
}
