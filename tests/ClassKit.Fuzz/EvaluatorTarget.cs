using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.Fuzz;

/// <summary>
/// Evaluating never throws, ends within its limits, and gives the same twice: alone, in a chain, as an array formula, and in the other
/// calendar.
/// </summary>
internal sealed class EvaluatorTarget : ITarget
{
    private const char Separator = '\u2063';
    private static readonly EvaluationLimits Limits = new(Steps: 200_000, ArrayCells: 100_000, AllSteps: 1_000_000);
    private readonly Dictionary<EvaluationStatus, long> _ends = [];

    public string Summary => string.Join(", ", _ends.OrderBy(end => end.Key).Select(end => $"{end.Value} {end.Key}"));

    public string Mutate(Mutator mutator)
    {
        // Most mutations of mutations do not parse: look for some that do.
        var formulas = new List<string>();
        for (var attempt = 0; attempt < 20 && formulas.Count < 3; attempt++)
        {
            var formula = mutator.Formula();
            if (CellFormula.Parse(formula).Formula is not null)
                formulas.Add(formula);
        }

        return string.Join(Separator, formulas);
    }

    public string? Run(string input)
    {
        var formulas = input.Split(Separator);
        var cells = new Dictionary<(int Row, int Column), CellContent>();
        for (var row = 1; row <= 8; row++)
        {
            cells[(row, 1)] = new(CellValue.FromNumber(row * 1.5 - 4));
            cells[(row, 2)] = new(CellValue.FromNumber(row * row));
            cells[(row, 3)] = new(row % 3 == 0 ? CellValue.FromLogical(true) : CellValue.FromText($"rye {row}"));
        }

        cells[(4, 3)] = new(CellValue.FromError(CellError.NotAvailable));
        for (var at = 0; at < formulas.Length; at++)
        {
            var text = formulas[at].TrimStart('=');
            cells[(1 + at, 4)] = new(CellValue.Blank, text);
            cells[(1 + at, 5)] = new(CellValue.Blank, text.Replace("A1", $"D{at + 2}", StringComparison.Ordinal), $"E{at + 1}:F{at + 1}");
        }

        foreach (var dates in Enum.GetValues<DateSystem>())
        {
            var evaluator = new WorkbookEvaluator(
                new([new("Sheet1", cells)], [new("r", null, "Sheet1!$A$1:$A$8"), new("x", null, formulas[0])], dates),
                Limits
            );
            List<CellAddress> asked =
            [
                .. Enumerable.Range(1, 3).SelectMany(row => new[] { 4, 5, 6 }, (row, column) => new CellAddress("Sheet1", row, column)),
            ];
            var evaluations = evaluator.EvaluateAll(asked);
            for (var at = 0; at < asked.Count; at++)
            {
                _ends[evaluations[at].Status] = _ends.GetValueOrDefault(evaluations[at].Status) + 1;
                if (evaluations[at].Value is { IsText: true } text && text.Text.Length > Limits.TextLength)
                    return "a text longer than a cell can hold";
                if (evaluations[at].Status != EvaluationStatus.Computed && evaluations[at].Reason is null)
                    return "no value and no reason";
            }

            var alone = evaluator.Evaluate(asked[0]);
            if (
                !IsOutOfSteps(alone)
                && !IsOutOfSteps(evaluations[0])
                && (alone.Status, alone.Value) != (evaluations[0].Status, evaluations[0].Value)
            )
                return "the same cell has two values";
            _ = alone.Dependencies.Count;
        }

        return null;
    }

    private static bool IsOutOfSteps(Evaluation evaluation) => evaluation.Reason is Obstacle.TooManySteps or Obstacle.TooManyStepsTogether;
}
