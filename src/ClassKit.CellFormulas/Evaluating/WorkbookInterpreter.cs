using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Computes cells of a workbook by following references from formula to formula.</summary>
internal sealed class WorkbookInterpreter
{
    private readonly PreparedWorkbook _workbook;
    private readonly Run _run;
    private readonly CellPath _path;
    private readonly Agenda _agenda;
    private readonly NamesOpen _names = new();
    private readonly WorkbookCells _cells;
    private readonly Interpreter _interpreter;

    public WorkbookInterpreter(PreparedWorkbook workbook, EvaluationLimits limits)
    {
        _workbook = workbook;
        _run = new(limits, workbook.Workbook.Dates);
        _path = new(workbook, _run);
        _agenda = new(_run);
        _cells = new(workbook, _run, _path, _agenda, _names, (root, isArray) => _interpreter!.Afresh(root, isArray));
        _interpreter = new(
            _run,
            _cells,
            new WorkbookNames(workbook, _run, _path, _names, _cells.Read, root => _interpreter!.Afresh(root, arrayMode: true))
        );
    }

    /// <summary>Where all work is counted.</summary>
    public Meter Meter => _run.Meter;

    /// <summary>Forgets all values and takes up other inputs.</summary>
    /// <param name="replaced">The inputs.</param>
    /// <param name="allowed">How many steps may be taken.</param>
    public void Begin(Replacements replaced, long allowed)
    {
        _cells.Begin(replaced);
        Meter.Reset(allowed);
    }

    /// <summary>The value of a cell. Values known from earlier cells since <see cref="Begin"/> are used again.</summary>
    public Evaluation Evaluate(CellKey target, Func<IReadOnlyCollection<CellAddress>>? dependencies, CancellationToken cancellation)
    {
        _interpreter.Start(cancellation);
        _path.Clear();
        _names.Clear();
        _agenda.Begin(target);
        var value = _run.Within(ReadAwaited, CellValue.Blank);
        var cells = dependencies is null
            ? new CellAddressView(_cells.KnownExcept(target), _workbook.Workbook)
            : new CellAddressView(dependencies);
        if (_run.Halted)
            return new(_run.Status, CellValue.Blank, _run.Reason, cells);
        return new(EvaluationStatus.Computed, value, value.IsError ? _run.Reason : null, cells);
    }

    private CellValue ReadAwaited()
    {
        var value = CellValue.Blank;
        while (!_agenda.IsEmpty && !_run.Halted)
        {
            value = _cells.Read(_agenda.Next);
            _agenda.Advance();
        }

        return value;
    }
}
