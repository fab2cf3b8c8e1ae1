using System.Collections.Concurrent;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Variants;

namespace ClassKit.Grading.Judging;

/// <summary>All inputs drawn for a class in one exercise, dealt and fresh: what hangs on them is the same for every student.</summary>
/// <param name="all">The inputs.</param>
internal sealed class DrawnInputs(IReadOnlyList<Variant> all)
{
    private readonly ConcurrentDictionary<string, double?> _most = new(StringComparer.Ordinal);

    /// <summary>The inputs.</summary>
    public IReadOnlyList<Variant> All => all;

    /// <summary>The largest right answer to a part; null where some are less than nothing.</summary>
    public double? Most(Part part) =>
        _most.GetOrAdd(part.Id, id => all.All(variant => variant.Answers[id] >= 0) ? all.Max(variant => variant.Answers[id]) : null);
}
