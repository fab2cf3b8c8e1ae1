using System.Globalization;
using ClassKit.CellFormulas;

namespace ClassKit.Exercises;

/// <summary>What must be true of a variant before a student sees it.</summary>
public static class VariantRules
{
    /// <summary>Makes a variant of the givens, or says which rule they break.</summary>
    /// <returns>The variant, or null with the broken rule in <paramref name="broken"/>.</returns>
    public static Variant? TryMake(Exercise exercise, IReadOnlyDictionary<string, decimal> givens, out string? broken)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        if (KeyValues.Answers(exercise, givens, out broken) is not { } answers) return null;

        var names = KeyValues.Names(givens, answers);
        broken = BrokenConstraint(exercise, names)
            ?? LookAlikeMisconception(exercise, answers, names)
            ?? CopiedGiven(exercise, givens, answers);
        return broken is null ? new Variant(exercise, givens, answers) : null;
    }

    private static string? BrokenConstraint(Exercise exercise, IReadOnlyDictionary<string, CellValue> names) =>
        exercise.Constraints.FirstOrDefault(constraint => !KeyValues.Holds(constraint, names)) is { } constraint
            ? $"the constraint {constraint.Text} does not hold"
            : null;

    /// <summary>A wrong method must not be accepted as right, or the right answer be taken for it: their tolerances must not meet.</summary>
    private static string? LookAlikeMisconception(
        Exercise exercise, IReadOnlyDictionary<string, double> answers, IReadOnlyDictionary<string, CellValue> names)
    {
        foreach (var part in exercise.Parts)
        {
            var right = answers[part.Id];
            foreach (var misconception in part.Misconceptions)
            {
                if (KeyValues.Number(misconception.Formula, names) is { } wrong
                    && Math.Abs(wrong - right) <= part.Tolerance.Around(right) + part.Tolerance.Around(wrong))
                {
                    return string.Create(CultureInfo.InvariantCulture,
                        $"the misconception {misconception.Id} of part {part.Id} gives {wrong:G6}, too close to the right {right:G6}");
                }
            }
        }
        return null;
    }

    /// <summary>An answer that already stands in the givens would be right by copying.</summary>
    private static string? CopiedGiven(
        Exercise exercise, IReadOnlyDictionary<string, decimal> givens, IReadOnlyDictionary<string, double> answers)
    {
        foreach (var part in exercise.Parts)
        {
            foreach (var given in exercise.Givens)
            {
                if (given.Unit == part.Unit && part.Tolerance.Accepts(answers[part.Id], (double)givens[given.Id]))
                    return $"the answer to part {part.Id} is the given {given.Id}";
            }
        }
        return null;
    }
}
