using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Finding;
using ClassKit.Grading.Judging.Trials;

namespace ClassKit.Grading.Judging;

/// <summary>One exercise in a returned workbook: where its givens and answers stand, and what they come to under any inputs.</summary>
internal sealed class ReturnedExercise
{
    private readonly Exercise _exercise;
    private readonly WorkbookSnapshot _workbook;
    private readonly WorkbookEvaluator _evaluator;
    private readonly IReadOnlyDictionary<string, CellAddress> _givens;
    private readonly IReadOnlyDictionary<string, CellAddress> _answers;
    private readonly List<string> _parts;
    private readonly List<CellAddress> _cells;
    private readonly Remembered<Trial, IReadOnlyList<Evaluation>> _known = new();

    public ReturnedExercise(
        Exercise exercise,
        WorkbookSnapshot workbook,
        WorkbookEvaluator evaluator,
        IReadOnlyDictionary<string, CellAddress> givens,
        IReadOnlyDictionary<string, CellAddress> answers)
    {
        _exercise = exercise;
        _workbook = workbook;
        _evaluator = evaluator;
        _givens = givens;
        _answers = answers;
        _parts = [.. answers.Keys];
        _cells = [.. answers.Values];
    }

    /// <summary>What stands in a part's answer cell; null if it is empty or holds nothing but spaces.</summary>
    public CellContent? Content(Part part) =>
        _workbook.Find(_answers[part.Id]) is { } content && CellFill.IsFilled(content) ? content : null;

    /// <summary>The answer cell of a part.</summary>
    public CellAddress Cell(Part part) => _answers[part.Id];

    /// <summary>The cell of a given.</summary>
    public CellAddress Cell(Given given) => _givens[given.Id];

    /// <summary>What the answer cell comes to with a trial's inputs in the givens' cells.</summary>
    public Evaluation Evaluate(Part part, Trial trial) => _known.Of(trial, one => _evaluator.EvaluateAll(_cells, Inputs(one)))[_parts.IndexOf(part.Id)];

    /// <summary>The same with values that stand in for the answer cells of other parts.</summary>
    /// <param name="part">The part.</param>
    /// <param name="trial">The inputs.</param>
    /// <param name="instead">The values, by part id.</param>
    public Evaluation Evaluate(Part part, Trial trial, IReadOnlyDictionary<string, double> instead)
    {
        var inputs = Inputs(trial);
        foreach (var (other, value) in instead)
            inputs[_answers[other]] = CellValue.FromNumber(value);
        return _evaluator.Evaluate(_answers[part.Id], inputs);
    }

    /// <summary>The formula of an answer cell over the names of the exercise; null where it cannot be written like this.</summary>
    public CellFormula? InNames(Part part) => new FormulaInNames(
        _workbook, _givens.Concat(_answers.Where(answer => answer.Key != part.Id)).DistinctBy(place => place.Value).ToDictionary(place => place.Value, place => place.Key)).Of(_answers[part.Id]);

    private Dictionary<CellAddress, CellValue> Inputs(Trial trial)
    {
        var inputs = new Dictionary<CellAddress, CellValue>(_givens.Count);
        foreach (var (given, cell) in _givens)
            inputs[cell] = CellValue.FromNumber((double)trial.Right.Givens[given]);
        return inputs;
    }

    /// <summary>The given that a result was computed from, if that is one and neither another nor an answer was used.</summary>
    public Given? OnlyGivenOf(Evaluation evaluation)
    {
        if (evaluation.Dependencies.Any(_answers.Values.Contains)) return null;
        var used = _exercise.Givens.Where(given => evaluation.Dependencies.Contains(_givens[given.Id])).Take(2).ToList();
        return used is [var only] ? only : null;
    }

    /// <summary>True if a result was computed from at least one given or other answer, and not from typed numbers alone.</summary>
    public bool DependsOnSheet(Evaluation evaluation) =>
        evaluation.Dependencies.Any(cell => _givens.Values.Contains(cell) || _answers.Values.Contains(cell));
}
