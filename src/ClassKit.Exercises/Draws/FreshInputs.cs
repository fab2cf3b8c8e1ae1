using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Draws;

/// <summary>Other inputs to put into students' workbooks, to see whether the formulas follow them.</summary>
/// <remarks>
/// They are drawn once for a class. A wrong method never lands on the right answer in any of them, since no variant is drawn in which it
/// does; of the pool each student gets those that differ most from what they were dealt, so that a typed number stands out.
/// </remarks>
public sealed class FreshInputs
{
    /// <summary>How many sets a workbook is tried with where the exercise allows it.</summary>
    public const int DefaultCount = 8;

    private const int PoolSize = 24;

    /// <summary>More than any pool holds.</summary>
    private const int MostOnRecord = 1000;

    private readonly Exercise _exercise;
    private readonly List<(Variant Variant, string Key)> _pool;
    private IReadOnlyList<Variant>? _all;
    private IReadOnlyList<decimal[]>? _values;

    private FreshInputs(Exercise exercise, IEnumerable<Variant> pool) =>
        (_exercise, _pool) = (exercise, [.. pool.Select(variant => (variant, VariantKey.Of(exercise, variant.Givens)))]);

    /// <summary>
    /// Draws the pool under the exercise's own rules, no two alike; it is smaller only where the exercise has no more variants.
    /// </summary>
    public FreshInputs(Exercise exercise, SeededDraws random)
        : this(exercise, [])
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var generator = VariantGenerator.ForFreshInputs(exercise);
        var seen = new HashSet<string>();
        while (_pool.Count < PoolSize)
        {
            var drawing = generator.Draw(random, variant => seen.Add(VariantKey.Of(exercise, variant.Givens)));
            if (drawing.Variant is not { } variant)
                break;
            _pool.Add((variant, VariantKey.Of(exercise, variant.Givens)));
        }
    }

    /// <summary>
    /// The pool that was drawn at an earlier time; null if the exercise, which may have been corrected since, would not draw all of it any
    /// more.
    /// </summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="recorded">The givens of every set by their ids, in the order in which they were drawn.</param>
    public static FreshInputs? Recorded(Exercise exercise, IReadOnlyList<IReadOnlyDictionary<string, decimal>> recorded)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(recorded);
        if (recorded.Count > MostOnRecord || !recorded.All(givens => AreOf(exercise, givens)))
            return null;
        var generator = VariantGenerator.ForFreshInputs(exercise);
        var variants = recorded.Select(givens => generator.TryMake(givens, out _)).OfType<Variant>().ToList();
        var pool = new FreshInputs(exercise, variants);
        return variants.Count == recorded.Count && pool._pool.DistinctBy(fresh => fresh.Key).Count() == recorded.Count ? pool : null;
    }

    private static bool AreOf(Exercise exercise, IReadOnlyDictionary<string, decimal> givens) =>
        givens.Count == exercise.Givens.Count
        && exercise.Givens.All(given => givens.TryGetValue(given.Id, out var value) && given.CanBe(value));

    /// <summary>All that were drawn for the class.</summary>
    public IReadOnlyList<Variant> All => _all ??= [.. _pool.Select(fresh => fresh.Variant)];

    /// <summary>The variants for a student, none equal to what they were dealt.</summary>
    public IReadOnlyList<Variant> For(IReadOnlyDictionary<string, decimal> dealt, int count = DefaultCount) =>
        [.. PlacesFor(dealt, count).Select(place => _pool[place].Variant)];

    /// <summary>Where in <see cref="All"/> the variants for a student stand, counted from 0.</summary>
    public IReadOnlyList<int> PlacesFor(IReadOnlyDictionary<string, decimal> dealt, int count = DefaultCount)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        decimal[] own = [.. _exercise.Givens.Select(given => dealt[given.Id])];
        _values ??= [.. _pool.Select(fresh => _exercise.Givens.Select(given => fresh.Variant.Givens[given.Id]).ToArray())];
        int[] differing = [.. _values.Select(values => Differing(values, own))];
        List<int> places = [];
        for (var most = own.Length; most > 0; most--)
        {
            for (var place = 0; place < differing.Length && places.Count < count; place++)
            {
                if (differing[place] == most)
                    places.Add(place);
            }
        }
        return places;
    }

    private static int Differing(decimal[] values, decimal[] dealt)
    {
        var differing = 0;
        for (var at = 0; at < values.Length; at++)
            differing += values[at] == dealt[at] ? 0 : 1;
        return differing;
    }
}
