using ClassKit.Exercises.Guarantees;

namespace ClassKit.Exercises.Draws;

/// <summary>Counts why draws were thrown away, and keeps the first of each kind as a counter-example.</summary>
internal sealed class RejectionTally
{
    private readonly Dictionary<object, Rejection> _counted = [];

    public void Add(Breach breach, IReadOnlyDictionary<string, decimal> givens) =>
        _counted[breach.Fault] = _counted.TryGetValue(breach.Fault, out var known)
            ? known with
            {
                Count = known.Count + 1,
            }
            : new(breach, givens, 1);

    /// <summary>Every reason met, the most frequent first.</summary>
    public IReadOnlyList<Rejection> ToList() => [.. _counted.Values.OrderByDescending(rejection => rejection.Count)];
}
