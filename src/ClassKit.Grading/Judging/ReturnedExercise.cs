using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Finding;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Trials;

namespace ClassKit.Grading.Judging;

/// <summary>One exercise in a returned workbook: where its givens and answers stand, and what they come to under any inputs.</summary>
internal sealed class ReturnedExercise
{
    private readonly Exercise _exercise;
    private readonly WorkbookSnapshot _workbook;
    private readonly Lazy<WorkbookEvaluator> _evaluator;
    private readonly SharedFormulas _shared;
    private readonly FoundCells _found;
    private readonly Remembered<Trial, IReadOnlyList<Evaluation>> _known = new();
    private readonly Remembered<Part, Evaluation> _dealt = new();
    private Dictionary<CellAddress, CellValue>? _dealtInputs;
    private KeyValuePair<CellAddress, double[]>[]? _inputs;
    private WorkbookColumns? _columns;
    private bool? _fillsSeveral;

    public ReturnedExercise(
        Exercise exercise,
        WorkbookSnapshot workbook,
        Lazy<WorkbookEvaluator> evaluator,
        SharedFormulas shared,
        FoundCells found
    )
    {
        _exercise = exercise;
        _workbook = workbook;
        _evaluator = evaluator;
        _shared = shared;
        _found = found;
    }

    /// <summary>For which fresh inputs anything explains the formulas of the class.</summary>
    public Explanations Explanations => _shared.Explanations;

    /// <summary>What stands in a part's answer cell; null if it is empty or holds nothing but spaces.</summary>
    public CellContent? Content(Part part) =>
        _workbook.Find(_found.Answers[part.Id]) is { } content && CellFill.IsFilled(content) ? content : null;

    /// <summary>The answer cell of a part.</summary>
    public CellAddress Cell(Part part) => _found.Answers[part.Id];

    /// <summary>The cell of a given.</summary>
    public CellAddress Cell(Given given) => _found.Givens[given.Id];

    /// <summary>What the answer cell comes to on the inputs that were dealt, with what it depends on.</summary>
    public Evaluation Evaluate(Part part, Trial dealt) =>
        _dealt.Of(part, one => _evaluator.Value.Evaluate(_found.Answers[one.Id], _dealtInputs ??= Inputs(dealt)));

    /// <summary>What it comes to under every trial, with the trial's inputs in the givens' cells.</summary>
    /// <param name="part">The part.</param>
    /// <param name="trials">The same trials for every part.</param>
    public CellValue[] Values(Part part, IReadOnlyList<Trial> trials) =>
        Values(part, _columns ??= Columns(trials, []), () =>
            EachTrial.Of(trials, trial =>
                _known
                    .Of(trial, one => _evaluator.Value.EvaluateAll(_found.Answers.Values, Inputs(one)))[
                        _found.Answers.Keys.ToList().IndexOf(part.Id)
                    ]
                    .Value
            )
        );

    /// <summary>The same with values that stand in for the answer cells of other parts.</summary>
    /// <param name="part">The part.</param>
    /// <param name="trials">The trials.</param>
    /// <param name="instead">For each trial the values, by part id; the same parts for all.</param>
    public CellValue[] Values(Part part, IReadOnlyList<Trial> trials, IReadOnlyList<IReadOnlyDictionary<string, double>> instead) =>
        Values(
            part,
            Columns(
                trials,
                instead[0]
                    .Keys.Select(other => KeyValuePair.Create(_found.Answers[other], EachTrial.Of(trials, (_, at) => instead[at][other])))
            ),
            () => EachTrial.Of(trials, (trial, at) => Evaluate(part, trial, instead[at]).Value)
        );

    /// <summary>What it comes to on inputs that are none of the trials.</summary>
    /// <param name="part">The part.</param>
    /// <param name="other">The inputs.</param>
    /// <param name="instead">What stands in for the answer cells of other parts, by part id.</param>
    public Evaluation Evaluate(Part part, Trial other, IReadOnlyDictionary<string, double> instead)
    {
        var inputs = Inputs(other);
        foreach (var (before, value) in instead)
            inputs[_found.Answers[before]] = CellValue.FromNumber(value);
        return _evaluator.Value.Evaluate(_found.Answers[part.Id], inputs);
    }

    /// <summary>From columns, if what is in the cells is plain arithmetic, and it nearly always is.</summary>
    private CellValue[] Values(Part part, WorkbookColumns columns, Func<CellValue[]> one) =>
        columns.Numbers(_found.Answers[part.Id]) is { } numbers ? [.. numbers.Select(CellValue.FromNumber)] : one();

    private WorkbookColumns Columns(IReadOnlyList<Trial> trials, IEnumerable<KeyValuePair<CellAddress, double[]>> instead)
    {
        _inputs ??=
        [
            .. _found.Givens.Select(given =>
                KeyValuePair.Create(given.Value, EachTrial.Of(trials, trial => (double)trial.Right.Givens[given.Key]))
            ),
        ];
        return _evaluator.Value.OnEach(trials.Count, _inputs.Concat(instead));
    }

    /// <summary>The formula of an answer cell over the names of the exercise; null where it cannot be written like this.</summary>
    public CellFormula? InNames(Part part)
    {
        var cell = _found.Answers[part.Id];
        return _found.AreWhereDealt && _workbook.Find(cell)?.Formula is { } text
            ? _shared.Named.Of(cell, text, () => Naming(part))
            : Naming(part).Of(cell);
    }

    /// <summary>
    /// The same of a formula that uses nothing but the cells of givens and answers, where all of them stand where they were dealt and
    /// nothing else fills them; null for any other.
    /// </summary>
    public CellFormula? OfDealtCells(Part part)
    {
        var cell = _found.Answers[part.Id];
        return _found.AreWhereDealt && _workbook.Find(cell) is { Formula: { } text } && !FillsSeveral(cell.Sheet)
            ? _shared.Named.OfDealtCells(cell, text, () => Naming(part))
            : null;
    }

    /// <summary>True if the formula of a part's cell has a number written in it.</summary>
    public bool HasWritten(Part part, double number) =>
        Content(part)?.Formula is { } text && _shared.Parses.Of(text).Formula is { } formula && WrittenNumbers.Hold(formula, number);

    /// <summary>The cells of all that the exercise asks and tells, by its names.</summary>
    public IReadOnlyDictionary<string, string> Cells(Exercise exercise) =>
        _found.AreWhereDealt ? _shared.DealtCells(exercise.Id, () => CellsOf(exercise)) : CellsOf(exercise);

    private Dictionary<string, string> CellsOf(Exercise exercise) =>
        exercise
            .Givens.Select(given => (given.Id, Cell(given).Cell))
            .Concat(exercise.Parts.Select(part => (part.Id, Cell(part).Cell)))
            .ToDictionary(cell => cell.Id, cell => cell.Cell);

    /// <summary>True for a sheet with array formulas, which may fill other cells than their own.</summary>
    private bool FillsSeveral(string sheet) =>
        _fillsSeveral ??= _workbook.FindSheet(sheet) is { } found && found.Cells.Values.Any(content => content.ArrayRange is not null);

    private FormulaInNames Naming(Part part) =>
        new(
            _workbook,
            _found
                .Givens.Concat(_found.Answers.Where(answer => answer.Key != part.Id))
                .DistinctBy(place => place.Value)
                .ToDictionary(place => place.Value, place => place.Key),
            _shared.Parses
        );

    private Dictionary<CellAddress, CellValue> Inputs(Trial trial)
    {
        var inputs = new Dictionary<CellAddress, CellValue>(_found.Givens.Count);
        foreach (var (given, cell) in _found.Givens)
            inputs[cell] = CellValue.FromNumber((double)trial.Right.Givens[given]);
        return inputs;
    }

    /// <summary>The given that a result was computed from, if that is one and neither another nor an answer was used.</summary>
    public Given? OnlyGivenOf(Evaluation evaluation)
    {
        if (evaluation.Dependencies.Any(_found.Answers.Values.Contains))
            return null;
        var used = _exercise.Givens.Where(given => evaluation.Dependencies.Contains(_found.Givens[given.Id])).Take(2).ToList();
        return used is [var only] ? only : null;
    }

    /// <summary>
    /// The first cell that a part's formula uses and cannot use: what leads to an error value, or what is empty where the value is a number.
    /// Empty cells are looked for where no range is pointed at, which may well hold some.
    /// </summary>
    public UnusableCell? Unusable(Part part, Evaluation evaluation)
    {
        if (Content(part)?.Formula is not { } formula)
            return null;
        var (own, error) = (_found.Answers[part.Id], evaluation.Value.IsError ? evaluation.Value.Error : (CellError?)null);
        if (error == CellError.Reference)
            return evaluation.Reason is Obstacle.Circle { Cells: var circle } && circle.Contains(own)
                ? circle.FirstOrDefault(cell => cell != own && cell.Sheet == own.Sheet) is { Sheet: not null } other
                    ? new(other.Cell, UnusableCellKind.InTurn)
                    : new(own.Cell, UnusableCellKind.Itself)
                : null;
        var used = evaluation.Dependencies.Where(cell => cell.Sheet == own.Sheet).OrderBy(cell => cell.Row).ThenBy(cell => cell.Column);
        if (error == CellError.Value)
            return used.Select(WithWords).FirstOrDefault(cell => cell is not null);
        return error is null or CellError.DivideByZero && !formula.Contains(':', StringComparison.Ordinal)
            ? used.Where(cell => !IsOfExercise(cell) && !CellFill.IsFilled(_workbook, cell))
                .Select(cell => new UnusableCell(cell.Cell, UnusableCellKind.Empty))
                .FirstOrDefault()
            : null;
    }

    private UnusableCell? WithWords(CellAddress cell) =>
        _workbook.Find(cell) is { Formula: null, Stored: { IsText: true } words }
            ? new(
                cell.Cell,
                UnusableCellKind.Words,
                new(words.Text),
                IsOfExercise(cell)
                    ? null
                    : _found
                        .Givens.Values.Concat(_found.Answers.Values)
                        .Where(other => other.Sheet == cell.Sheet && other.Row == cell.Row)
                        .Select(other => other.Cell)
                        .FirstOrDefault()
            )
            : null;

    private bool IsOfExercise(CellAddress cell) => _found.Givens.Values.Contains(cell) || _found.Answers.Values.Contains(cell);

    /// <summary>True if a result was computed from at least one given or other answer, and not from typed numbers alone.</summary>
    public bool DependsOnSheet(Evaluation evaluation) => evaluation.Dependencies.Any(IsOfExercise);
}
