namespace ClassKit.Exercises;

/// <summary>Other inputs to put into a student's workbook, to see whether the formulas follow them.</summary>
public static class FreshInputs
{
    /// <summary>How many sets are drawn where the exercise allows it.</summary>
    public const int DefaultCount = 8;

    /// <summary>Draws sets of givens under the exercise's own constraints, none equal to the dealt one or to each other.</summary>
    /// <returns>Up to <paramref name="count"/> variants; fewer only where the exercise has no more.</returns>
    public static IReadOnlyList<Variant> Draw(
        Exercise exercise, IReadOnlyDictionary<string, decimal> dealt, SeededDraws random, int count = DefaultCount)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var generator = VariantGenerator.ForFreshInputs(exercise);
        var seen = new HashSet<string> { VariantKey.Of(exercise, dealt) };
        var fresh = new List<Variant>(count);
        while (fresh.Count < count)
        {
            var drawing = generator.Draw(random, variant => seen.Add(VariantKey.Of(exercise, variant.Givens)));
            if (drawing.Variant is null) break;
            fresh.Add(drawing.Variant);
        }
        return fresh;
    }
}
