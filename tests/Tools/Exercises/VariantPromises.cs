using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Effort;
using ClassKit.Exercises.Texts;
using ClassKit.Exercises.Variants;

namespace ClassKit.Tests.Exercises;

/// <summary>What must hold of any variant that is dealt, looked at without asking the generator's own rules.</summary>
/// <remarks>It is asked a million times: messages are made only where something is wrong.</remarks>
internal static class VariantPromises
{
    /// <summary>Fails the test unless a variant is what students are promised.</summary>
    public static void AssertKept(Exercise exercise, Variant variant, EffortBand band)
    {
        var names = exercise.Givens.ToDictionary(
            given => given.Id,
            given => CellValue.FromNumber((double)variant.Givens[given.Id]),
            StringComparer.OrdinalIgnoreCase
        );
        var standing = exercise
            .Givens.Where(given => !given.Unit.IsNone)
            .Select(given => (given.Unit, Value: (double)variant.Givens[given.Id]))
            .ToList();
        foreach (var given in exercise.Givens)
            Assert.True(
                given.From <= variant.Givens[given.Id]
                    && variant.Givens[given.Id] <= given.To
                    && (given.IsConstant || (variant.Givens[given.Id] - given.From) % given.Step == 0)
            );

        foreach (var part in exercise.Parts)
        {
            var right = Number(part.Key, names)!.Value;
            Assert.Equal(right, variant.Answers[part.Id]);
            Assert.True(double.IsFinite(right));
            if (!part.Tolerance.Accepts(right, ResultText.Rounded(part, right)))
                Assert.Fail($"{part.Id}: {right} cannot be written down");
            foreach (var (unit, value) in standing)
            {
                if (unit == part.Unit && part.Tolerance.Accepts(right, value))
                    Assert.Fail($"{part.Id}: {right} stands on the sheet");
            }

            List<double> values =
            [
                right,
                .. part.Misconceptions.Select(misconception => Number(misconception.Formula, names)).OfType<double>(),
            ];
            for (var i = 0; i < values.Count; i++)
            {
                for (var j = i + 1; j < values.Count; j++)
                {
                    if (Math.Abs(values[i] - values[j]) <= part.Tolerance.Around(values[i]) + part.Tolerance.Around(values[j]))
                        Assert.Fail($"{part.Id}: {values[i]} and {values[j]}");
                }
            }
            if (!part.Unit.IsNone)
                standing.Add((part.Unit, right));
            names[part.Id] = CellValue.FromNumber(right);
        }
        foreach (var constraint in exercise.Constraints)
        {
            if (NamedEvaluation.Evaluate(constraint, names).Value != CellValue.FromLogical(true))
                Assert.Fail($"{constraint.Text} does not hold");
        }
        Assert.True(band.Holds(EffortMeasure.Of(variant)));
    }

    private static double? Number(CellFormula formula, Dictionary<string, CellValue> names) =>
        NamedEvaluation.Evaluate(formula, names) is { Status: EvaluationStatus.Computed, Value: { IsNumber: true, Number: var number } }
            ? number
            : null;
}
