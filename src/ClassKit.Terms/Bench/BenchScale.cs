namespace ClassKit.Terms.Bench;

/// <summary>What a practical rubric measures with: criteria with weights, each at one of a few levels.</summary>
/// <param name="Criteria">The names of the criteria, each with its weight, which is above 0.</param>
/// <param name="Levels">What a criterion of weight 1 earns at each level, from the lowest to the highest; at least two.</param>
/// <param name="LevelNames">What each level is called.</param>
public sealed record BenchScale(
    IReadOnlyList<(string Name, decimal Weight)> Criteria,
    IReadOnlyList<decimal> Levels,
    IReadOnlyList<string> LevelNames
)
{
    /// <summary>Stands for a level where a criterion is not asked of a student.</summary>
    public const int NotAsked = -1;

    /// <summary>What a marker saw without what another of the same work was not asked.</summary>
    /// <param name="places">The place of the level that each criterion reached, or <see cref="NotAsked"/>.</param>
    /// <param name="others">The other's.</param>
    public static IReadOnlyList<int> Common(IReadOnlyList<int> places, IReadOnlyList<int> others) =>
        [.. places.Zip(others, (place, other) => other == NotAsked ? NotAsked : place)];

    /// <summary>What the highest level everywhere earns.</summary>
    public decimal OutOf => Levels[^1] * Criteria.Sum(criterion => criterion.Weight);

    /// <summary>What a student earned.</summary>
    /// <param name="places">The place of the level that each criterion reached; <see cref="NotAsked"/> where it was not asked.</param>
    public decimal Points(IReadOnlyList<int> places) =>
        Criteria.Zip(places, (criterion, place) => place == NotAsked ? 0 : criterion.Weight * Levels[place]).Sum();

    /// <summary>What a student could earn.</summary>
    /// <param name="places">The place of the level that each criterion reached; <see cref="NotAsked"/> where it was not asked.</param>
    public decimal OutOfThese(IReadOnlyList<int> places) =>
        Levels[^1] * Criteria.Zip(places).Where(pair => pair.Second != NotAsked).Sum(pair => pair.First.Weight);
}
