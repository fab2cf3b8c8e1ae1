using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Authoring;
using ClassKit.Wording.Formulas;

namespace ClassKit.Content.Exercises;

/// <summary>Works an exercise through at the lowest and at the highest of all givens, to see that every key comes to a number.</summary>
internal static class Trial
{
    public static void Run(
        IReadOnlyList<Given> givens,
        IReadOnlyList<CellFormula> constraints,
        IReadOnlyList<(Part Part, int Line)> parts,
        ProblemList problems
    )
    {
        Run(givens.ToDictionary(given => given.Id, given => given.From), "lowest", constraints, parts, problems);
        if (problems.IsEmpty)
            Run(givens.ToDictionary(given => given.Id, given => given.To), "highest", constraints, parts, problems);
    }

    private static void Run(
        Dictionary<string, decimal> values,
        string where,
        IReadOnlyList<CellFormula> constraints,
        IReadOnlyList<(Part Part, int Line)> parts,
        ProblemList problems
    )
    {
        var names = values.ToDictionary(value => value.Key, value => CellValue.FromNumber((double)value.Value));
        var wrong = new List<(int Line, string What, CellFormula Formula, Evaluation Result)>();
        foreach (var (part, line) in parts.TakeWhile(_ => wrong.Count == 0))
        {
            var answer = NamedEvaluation.Evaluate(part.Key, names);
            if (!IsNumber(answer))
                wrong.Add((line, $"The key of `{part.Id}`", part.Key, answer));
            foreach (var misconception in part.Misconceptions)
            {
                // A wrong turn that picks what happens to be right leads nowhere.
                if (part.Choice is null && NamedEvaluation.Evaluate(misconception.Formula, names) is var slip && !IsNumber(slip))
                    wrong.Add((line, $"The misconception `{misconception.Id}` of `{part.Id}`", misconception.Formula, slip));
            }
            names[part.Id] = answer.Value;
        }
        // Such a variant is never dealt, so nothing need come of it.
        if (constraints.Any(constraint => NamedEvaluation.Evaluate(constraint, names).Value == CellValue.FromLogical(false)))
            return;
        foreach (var (line, what, formula, result) in wrong)
            problems.Add(
                line,
                $"{what}, `{formula.Text}`, gives {(result.Status == EvaluationStatus.Computed ? result.Value : result.Status)} when every given is at its {where}{(result.Reason is { } reason ? $" ({ObstacleWords.Of(reason)})" : "")}",
                "It must give a number for every student: check the formula, the ranges and the constraints."
            );
    }

    private static bool IsNumber(Evaluation result) => result.Status == EvaluationStatus.Computed && result.Value.IsNumber;
}
