using ClassKit.CellFormulas;

namespace ClassKit.Exercises;

/// <summary>How a part is worked out, from its own key: never written by hand a second time.</summary>
/// <param name="Method">MathML: the key with names, and what it gives.</param>
/// <param name="Numbers">MathML: the same with the numbers put in, and the result.</param>
/// <param name="Result">What the key gives for these numbers; null where it gives none, as a student's own earlier answer may bring about.</param>
public sealed record WorkedSolution(string Method, string Numbers, double? Result)
{
    /// <summary>Works out one part.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">One of its parts.</param>
    /// <param name="givens">The values dealt, by given id.</param>
    /// <param name="earlier">Answers to the parts before, by part id: the key's, or a student's own.</param>
    public static WorkedSolution Of(
        Exercise exercise, Part part, IReadOnlyDictionary<string, decimal> givens, IReadOnlyDictionary<string, double> earlier)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(givens);
        ArgumentNullException.ThrowIfNull(earlier);

        double? result = NamedEvaluation.Evaluate(part.Key, Values(givens, earlier)) is { Status: EvaluationStatus.Computed, Value: { IsNumber: true, Number: var number } }
            ? number
            : null;
        return new(
            MethodOf(exercise, part),
            result is { } value
                ? MathMl.Write(part.Key, Quantity, MathMlOperand.Quantity(ResultText.Number(part, value), part.Unit))
                : MathMl.Write(part.Key, Quantity),
            result);

        MathMlOperand? Quantity(string name) =>
            exercise.Givens.FirstOrDefault(given => Same(given.Id, name)) is { } given && givens.TryGetValue(given.Id, out var dealt)
                ? MathMlOperand.Quantity(GivenText.Number(given, dealt), given.Unit)
                : exercise.Parts.FirstOrDefault(before => Same(before.Id, name)) is { } before && earlier.TryGetValue(before.Id, out var answer)
                    ? MathMlOperand.Quantity(ResultText.Number(before, answer), before.Unit)
                    : null;
    }

    /// <summary>MathML: a part's key with the givens by their labels and the parts by their names.</summary>
    public static string MethodOf(Exercise exercise, Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return MathMl.Write(part.Key, name => Words(exercise, name), MathMlOperand.Words(NameOf(part.Id)));
    }

    /// <summary>MathML: what a misconception computes, in the same words as the method.</summary>
    public static string WrongMethodOf(Exercise exercise, Misconception misconception)
    {
        ArgumentNullException.ThrowIfNull(misconception);
        return MathMl.Write(misconception.Formula, name => Words(exercise, name));
    }

    private static MathMlOperand? Words(Exercise exercise, string name) =>
        exercise.Givens.FirstOrDefault(given => Same(given.Id, name)) is { } given ? MathMlOperand.Words(LowerFirst(given.Label)) : MathMlOperand.Words(NameOf(name));

    private static Dictionary<string, CellValue> Values(IReadOnlyDictionary<string, decimal> givens, IReadOnlyDictionary<string, double> earlier)
    {
        var names = givens.ToDictionary(given => given.Key, given => CellValue.FromNumber((double)given.Value), StringComparer.OrdinalIgnoreCase);
        foreach (var (part, value) in earlier)
            names[part] = CellValue.FromNumber(value);
        return names;
    }

    private static string NameOf(string id) => id.Replace('_', ' ');

    /// <summary>A label begins a row, but stands in the middle of a formula; <c>pH</c> or <c>NV</c> keep their capitals.</summary>
    private static string LowerFirst(string label) =>
        label.Length > 1 && char.IsUpper(label[0]) && !char.IsUpper(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
