using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;

namespace ClassKit.Exercises.Keys;

/// <summary>What an exercise's keys, constraints and misconceptions come to for given values.</summary>
public static class KeyValues
{
    /// <summary>The names that a formula of the exercise may use: its givens, as a spreadsheet cell holds them.</summary>
    public static Dictionary<string, CellValue> Names(IReadOnlyDictionary<string, decimal> givens)
    {
        ArgumentNullException.ThrowIfNull(givens);
        return Names(givens, room: 0);
    }

    /// <summary>
    /// The givens alone, with room for what will be worked out from them: a table that grows is copied, and a proof makes thousands.
    /// </summary>
    internal static Dictionary<string, CellValue> Names(IReadOnlyDictionary<string, decimal> givens, int room)
    {
        var names = new Dictionary<string, CellValue>(givens.Count + room, StringComparer.OrdinalIgnoreCase);
        foreach (var (given, value) in givens)
            names.Add(given, CellValue.FromNumber((double)value));
        return names;
    }

    /// <summary>The givens together with answers to parts, which may be a student's own.</summary>
    public static Dictionary<string, CellValue> Names(
        IReadOnlyDictionary<string, decimal> givens,
        IEnumerable<KeyValuePair<string, double>> answers
    )
    {
        ArgumentNullException.ThrowIfNull(answers);
        var names = Names(givens, room: answers is IReadOnlyCollection<KeyValuePair<string, double>> { Count: var count } ? count : 0);
        foreach (var (part, value) in answers)
            names[part] = CellValue.FromNumber(value);
        return names;
    }

    /// <summary>The same without a table of its own: where a formula or two are worked out, making one is most of the work.</summary>
    /// <param name="givens">Every given's value by its id; must not change afterwards.</param>
    /// <param name="answers">Answers to parts by their ids; must not change afterwards.</param>
    public static IReadOnlyDictionary<string, CellValue> NamesInPlace(
        IReadOnlyDictionary<string, decimal> givens,
        IReadOnlyDictionary<string, double> answers
    ) => new KeyNames(givens, answers);

    /// <summary>The number that a formula gives, or null if it gives anything else.</summary>
    public static double? Number(CellFormula formula, IReadOnlyDictionary<string, CellValue> names) =>
        NamedEvaluation.Evaluate(formula, names) is { Status: EvaluationStatus.Computed, Value: { IsNumber: true, Number: var number } }
            ? number
            : null;

    /// <summary>True if the formula gives TRUE.</summary>
    public static bool Holds(CellFormula constraint, IReadOnlyDictionary<string, CellValue> names) =>
        NamedEvaluation.Evaluate(constraint, names)
            is { Status: EvaluationStatus.Computed, Value: { Kind: CellValueKind.Logical, Logical: true } };
}
