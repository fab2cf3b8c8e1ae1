using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Draws;

/// <summary>How many variants an exercise has.</summary>
/// <param name="Count">The number.</param>
/// <param name="IsExact">True if all were tried; false if a sample was.</param>
public sealed record VariantSpace(long Count, bool IsExact)
{
    /// <summary>The most combinations of givens that are tried one by one.</summary>
    public const int MostCounted = 4_000;

    private const int Sample = 1000;

    /// <summary>
    /// Counts the variants that keep every rule, or estimates their number from a sample where there are too many combinations.
    /// </summary>
    /// <param name="generator">What makes the variants.</param>
    /// <param name="keptShare">The share of draws that keep every rule, 0 to 1, where draws were made already; null draws a sample.</param>
    public static VariantSpace Of(VariantGenerator generator, double? keptShare = null)
    {
        ArgumentNullException.ThrowIfNull(generator);
        return All(generator) is { } all
            ? new(all.Count, true)
            : new((long)Math.Min(long.MaxValue / 2, Combinations(generator.Exercise) * (keptShare ?? SampledShare(generator))), false);
    }

    private static double SampledShare(VariantGenerator generator)
    {
        var random = SeededDraws.For(0, "space", generator.Exercise.Id);
        return Enumerable.Range(0, Sample).Count(_ => generator.TryDraw(random, out var _, out var _) is not null) / (double)Sample;
    }

    /// <summary>Every variant, or null where there are too many combinations of givens to try them all.</summary>
    internal static List<Variant>? All(VariantGenerator generator)
    {
        var givens = generator.Exercise.Givens;
        if (Combinations(generator.Exercise) is var combinations && combinations > MostCounted)
            return null;
        var variants = new List<Variant>();
        for (var number = 0; number < (int)combinations; number++)
        {
            var rest = number;
            var values = new Dictionary<string, decimal>(givens.Count);
            foreach (var given in givens)
            {
                values[given.Id] = given.ValueAt(rest % given.Count);
                rest /= given.Count;
            }
            if (generator.TryMake(values, out _) is { } variant)
                variants.Add(variant);
        }
        return variants;
    }

    private static double Combinations(Exercise exercise) => exercise.Givens.Aggregate(1.0, (product, given) => product * given.Count);
}
