using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>One exercise in a returned workbook: where its givens and answers stand, and what they come to under any inputs.</summary>
internal sealed class ReturnedExercise
{
    private readonly WorkbookSnapshot _workbook;
    private readonly WorkbookEvaluator _evaluator;
    private readonly IReadOnlyDictionary<string, CellAddress> _givens;
    private readonly IReadOnlyDictionary<string, CellAddress> _answers;

    public ReturnedExercise(
        WorkbookSnapshot workbook,
        WorkbookEvaluator evaluator,
        IReadOnlyDictionary<string, CellAddress> givens,
        IReadOnlyDictionary<string, CellAddress> answers)
    {
        _workbook = workbook;
        _evaluator = evaluator;
        _givens = givens;
        _answers = answers;
    }

    /// <summary>What stands in a part's answer cell; null if it is empty or holds nothing but spaces.</summary>
    public CellContent? Content(Part part) =>
        _workbook.Find(_answers[part.Id]) is { } content && (content.Formula is not null || content.Stored.ToString().Trim().Length > 0) ? content : null;

    /// <summary>The answer cell of a part.</summary>
    public CellAddress Cell(Part part) => _answers[part.Id];

    /// <summary>What the answer cell comes to with a trial's inputs in the givens' cells.</summary>
    /// <param name="part">The part.</param>
    /// <param name="trial">The inputs.</param>
    /// <param name="instead">Values to stand in for the answer cells of other parts, by part id.</param>
    public Evaluation Evaluate(Part part, Trial trial, IReadOnlyDictionary<string, double>? instead = null)
    {
        var replaced = new Dictionary<CellAddress, CellValue>(_givens.Count + (instead?.Count ?? 0));
        foreach (var (given, cell) in _givens)
            replaced[cell] = CellValue.FromNumber((double)trial.Right.Givens[given]);
        foreach (var (other, value) in instead ?? new Dictionary<string, double>())
            replaced[_answers[other]] = CellValue.FromNumber(value);
        return _evaluator.Evaluate(_answers[part.Id], replaced);
    }

    /// <summary>True if a result was computed from at least one given or other answer, and not from typed numbers alone.</summary>
    public bool DependsOnSheet(Evaluation evaluation) =>
        evaluation.Dependencies.Any(cell => _givens.Values.Contains(cell) || _answers.Values.Contains(cell));
}
