using System.Net;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Printing;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Solutions;

/// <summary>How a part is worked out, from its own key: never written by hand a second time.</summary>
/// <param name="Method">MathML: the key with names, and what it gives. HTML: why, where something is chosen.</param>
/// <param name="Numbers">MathML: the same with the numbers put in, and the result. HTML: the option, where something is chosen.</param>
/// <param name="Result">What the key gives for these numbers; null where it gives none, as a student's own earlier answer may bring
/// about.</param>
public sealed record WorkedSolution(string Method, string Numbers, double? Result)
{
    /// <summary>What is worked out before, if the key is written over steps.</summary>
    public IReadOnlyList<SolutionStep> Steps { get; init; } = [];

    /// <summary>Works out one part.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">One of its parts.</param>
    /// <param name="givens">The values dealt, by given id.</param>
    /// <param name="earlier">Answers to the parts before, by part id: the key's, or a student's own.</param>
    public static WorkedSolution Of(
        Exercise exercise,
        Part part,
        IReadOnlyDictionary<string, decimal> givens,
        IReadOnlyDictionary<string, double> earlier
    )
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(givens);
        ArgumentNullException.ThrowIfNull(earlier);

        var names = Values(givens, earlier);
        var worked = new Dictionary<string, MathMlOperand>(StringComparer.OrdinalIgnoreCase);
        var steps = new List<SolutionStep>();
        foreach (var step in StepsTo(exercise, part))
        {
            var numbers = MathMl.Write(step.Key, Quantity);
            if (KeyValues.Number(step.Key, names) is { } come)
            {
                worked[step.Id] = MathMlOperand.Quantity(ResultText.Number(step, come), step.Unit.Sign);
                numbers = MathMl.Write(step.Key, Quantity, worked[step.Id]);
                names[step.Id] = CellValue.FromNumber(come);
            }
            steps.Add(
                new(
                    step.What,
                    MathMl.Write(step.Key, name => Words(exercise, name), MathMlOperand.Words(Called(exercise, step.Id))),
                    numbers
                )
            );
        }

        var key = part.Written ?? part.Key;
        var result = KeyValues.Number(part.Key, names);
        if (part.InWords is { } asked)
            return new(Escaped(asked.LookFor), "", null);
        if (part.Choice is { } choice)
            return new(Escaped(choice.Why), result is { } chosen ? Escaped(ResultText.Of(part, chosen)) : "", result) { Steps = steps };
        return new(
            MethodOf(exercise, part),
            result is { } value
                ? MathMl.Write(key, Quantity, MathMlOperand.Quantity(ResultText.Number(part, value), part.Unit.Sign))
                : MathMl.Write(key, Quantity),
            result
        )
        {
            Steps = steps,
        };

        MathMlOperand? Quantity(string name) =>
            exercise.Givens.FirstOrDefault(given => Same(given.Id, name)) is { } given && givens.TryGetValue(given.Id, out var dealt)
                ? MathMlOperand.Quantity(GivenText.Number(given, dealt), given.Unit.Sign)
            : worked.TryGetValue(name, out var step) ? step
            : exercise.Parts.FirstOrDefault(before => Same(before.Id, name)) is { } before && earlier.TryGetValue(before.Id, out var answer)
                ? MathMlOperand.Quantity(ResultText.Number(before, answer), before.Unit.Sign)
            : null;
    }

    /// <summary>MathML: a part's key with the givens by their labels and the parts by their names.</summary>
    public static string MethodOf(Exercise exercise, Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return MathMl.Write(part.Written ?? part.Key, name => Words(exercise, name), MathMlOperand.Words(Called(exercise, part.Id)));
    }

    /// <summary>MathML: any formula over the exercise's names, in the same words as the method.</summary>
    public static string MethodOf(Exercise exercise, CellFormula formula) => MathMl.Write(formula, name => Words(exercise, name));

    /// <summary>MathML: what a misconception computes, in the same words as the method.</summary>
    public static string WrongMethodOf(Exercise exercise, Misconception misconception)
    {
        ArgumentNullException.ThrowIfNull(misconception);
        return MathMl.Write(misconception.Written ?? misconception.Formula, name => Words(exercise, name));
    }

    /// <summary>The steps that a part's key uses, and those that they use in turn, in the exercise's order.</summary>
    public static IReadOnlyList<WorkingStep> StepsTo(Exercise exercise, Part part)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(part);
        var needed = new HashSet<string>((part.Written ?? part.Key).Names, StringComparer.OrdinalIgnoreCase);
        var steps = new List<WorkingStep>();
        foreach (var step in exercise.Steps.Reverse().Where(step => needed.Contains(step.Id)))
        {
            steps.Add(step);
            needed.UnionWith(step.Key.Names);
        }
        steps.Reverse();
        return steps;
    }

    private static MathMlOperand? Words(Exercise exercise, string name) => MathMlOperand.Words(Called(exercise, name));

    /// <summary>
    /// What a given, a step or a part is called in a formula: with its unit where another is called the same, so that an oven in °C does
    /// not stand for itself in °F.
    /// </summary>
    private static string Called(Exercise exercise, string name)
    {
        var words = Plain(exercise, name);
        IEnumerable<(string Id, Unit Unit)> others =
        [
            .. exercise.Givens.Select(given => (given.Id, given.Unit)),
            .. exercise.Parts.Select(part => (part.Id, part.Unit)),
        ];
        var unit = others.FirstOrDefault(one => Same(one.Id, name)).Unit;
        return unit is { IsNone: false } && others.Any(other => !Same(other.Id, name) && Same(Plain(exercise, other.Id), words))
            ? $"{words} in {unit}"
            : words;
    }

    private static string Plain(Exercise exercise, string name) =>
        exercise.Givens.FirstOrDefault(given => Same(given.Id, name)) is { } given ? LowerFirst(given.Label) : PartName.Of(name);

    private static Dictionary<string, CellValue> Values(
        IReadOnlyDictionary<string, decimal> givens,
        IReadOnlyDictionary<string, double> earlier
    )
    {
        var names = givens.ToDictionary(
            given => given.Key,
            given => CellValue.FromNumber((double)given.Value),
            StringComparer.OrdinalIgnoreCase
        );
        foreach (var (part, value) in earlier)
            names[part] = CellValue.FromNumber(value);
        return names;
    }

    private static string Escaped(string text) => $"<span>{WebUtility.HtmlEncode(text)}</span>";

    /// <summary>A label begins a row, but stands in the middle of a formula; <c>pH</c> or <c>NV</c> keep their capitals.</summary>
    private static string LowerFirst(string label) =>
        label.Length > 1 && char.IsUpper(label[0]) && !char.IsUpper(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
