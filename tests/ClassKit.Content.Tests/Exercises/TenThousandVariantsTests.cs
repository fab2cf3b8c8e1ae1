using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Content.Exercises;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Effort;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Texts;
using ClassKit.Exercises.Variants;

namespace ClassKit.Content.Tests.Exercises;

/// <summary>Ten thousand variants of every exercise that is shipped, each looked at without asking the generator's own rules.</summary>
public sealed class TenThousandVariantsTests
{
    private const int Variants = 10_000;

    public static TheoryData<string> Files =>
    [
        .. Directory.EnumerateFiles(Path.Combine(Repository.Root, "lessons"), "*.md", SearchOption.AllDirectories)
            .Where(file => File.ReadLines(file).Take(10).Any(line => line.StartsWith("skill:", StringComparison.Ordinal)))
            .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Files))]
    public void No_guarantee_is_broken_and_no_draw_thrown_away_more_than_a_hundred_times_in_a_row(string file)
    {
        var exercise = ExerciseReader.Read(Path.Combine(Repository.Root, file)).Model;
        Assert.NotNull(exercise);
        var generator = VariantGenerator.For(exercise);
        var random = new SeededDraws(20_261_125);
        var (kept, run) = (0, 0);
        while (kept < Variants)
        {
            if (generator.TryDraw(random, out _, out var breach) is not { } variant)
            {
                Assert.True(++run <= 100, $"{file}: {run} draws in a row thrown away, the last because {breach!.Because}: {breach.Seen}");
                continue;
            }
            run = 0;
            kept++;
            AssertKeepsItsPromises(exercise, variant, generator.Band!);
        }
    }

    private static void AssertKeepsItsPromises(Exercise exercise, Variant variant, EffortBand band)
    {
        var names = exercise.Givens.ToDictionary(given => given.Id, given => CellValue.FromNumber((double)variant.Givens[given.Id]), StringComparer.OrdinalIgnoreCase);
        var standing = exercise.Givens.Where(given => given.Unit.Length > 0).Select(given => (given.Unit, Value: (double)variant.Givens[given.Id])).ToList();
        foreach (var given in exercise.Givens)
            Assert.True(given.From <= variant.Givens[given.Id] && variant.Givens[given.Id] <= given.To && (given.IsConstant || (variant.Givens[given.Id] - given.From) % given.Step == 0));

        foreach (var part in exercise.Parts)
        {
            var right = Number(part.Key, names)!.Value;
            Assert.Equal(right, variant.Answers[part.Id]);
            Assert.True(double.IsFinite(right));
            Assert.True(part.Tolerance.Accepts(right, ResultText.Rounded(part, right)), $"{part.Id}: {right} cannot be written down");
            foreach (var (unit, value) in standing)
                Assert.False(unit == part.Unit && part.Tolerance.Accepts(right, value), $"{part.Id}: {right} stands on the sheet");

            List<double> values = [right, .. part.Misconceptions.Select(misconception => Number(misconception.Formula, names)).OfType<double>()];
            for (var i = 0; i < values.Count; i++)
            {
                for (var j = i + 1; j < values.Count; j++)
                    Assert.True(Math.Abs(values[i] - values[j]) > part.Tolerance.Around(values[i]) + part.Tolerance.Around(values[j]), $"{part.Id}: {values[i]} and {values[j]}");
            }
            if (part.Unit.Length > 0) standing.Add((part.Unit, right));
            names[part.Id] = CellValue.FromNumber(right);
        }
        Assert.All(exercise.Constraints, constraint => Assert.Equal(CellValue.FromLogical(true), NamedEvaluation.Evaluate(constraint, names).Value));
        Assert.True(band.Holds(EffortMeasure.Of(variant)));
    }

    private static double? Number(CellFormula formula, Dictionary<string, CellValue> names) =>
        NamedEvaluation.Evaluate(formula, names) is { Status: EvaluationStatus.Computed, Value: { IsNumber: true, Number: var number } } ? number : null;
}
