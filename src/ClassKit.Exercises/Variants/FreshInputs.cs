namespace ClassKit.Exercises;

/// <summary>Other inputs to put into students' workbooks, to see whether the formulas follow them.</summary>
/// <remarks>
/// They are drawn once for a class. A wrong method never lands on the right answer in any of them, since no variant is drawn in which it does;
/// of the pool each student gets those that differ most from what they were dealt, so that a typed number stands out.
/// </remarks>
public sealed class FreshInputs
{
    /// <summary>How many sets a workbook is tried with where the exercise allows it.</summary>
    public const int DefaultCount = 8;

    private const int PoolSize = 24;

    private readonly Exercise _exercise;
    private readonly List<(Variant Variant, string Key)> _pool = [];

    /// <summary>Draws the pool under the exercise's own rules, no two alike; it is smaller only where the exercise has no more variants.</summary>
    public FreshInputs(Exercise exercise, SeededDraws random)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        _exercise = exercise;
        var generator = VariantGenerator.ForFreshInputs(exercise);
        var seen = new HashSet<string>();
        while (_pool.Count < PoolSize)
        {
            var drawing = generator.Draw(random, variant => seen.Add(VariantKey.Of(exercise, variant.Givens)));
            if (drawing.Variant is not { } variant) break;
            _pool.Add((variant, VariantKey.Of(exercise, variant.Givens)));
        }
    }

    /// <summary>All that were drawn for the class.</summary>
    public IReadOnlyList<Variant> All => [.. _pool.Select(fresh => fresh.Variant)];

    /// <summary>The variants for a student, none equal to what they were dealt.</summary>
    public IReadOnlyList<Variant> For(IReadOnlyDictionary<string, decimal> dealt, int count = DefaultCount)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        var key = VariantKey.Of(_exercise, dealt);
        return
        [
            .. _pool.Where(fresh => fresh.Key != key)
                .OrderByDescending(fresh => fresh.Variant.Givens.Count(given => given.Value != dealt[given.Key]))
                .Take(count)
                .Select(fresh => fresh.Variant),
        ];
    }
}
