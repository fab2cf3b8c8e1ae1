using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Measured;

/// <summary>One thing measured of a bread of a series, held over the teams against the bread as written.</summary>
/// <param name="AsWritten">What was measured of the bread as written.</param>
/// <param name="Changed">The same of the bread that differs.</param>
/// <param name="Bread">That bread.</param>
/// <param name="Difference">How much more the changed one came to.</param>
public sealed record SeriesMeasured(
    MeasuredQuantity AsWritten,
    MeasuredQuantity Changed,
    MeasuredBread Bread,
    UnpairedDifference Difference
)
{
    /// <summary>What is the same before anybody bakes, or is no measurement: it is compared with nothing.</summary>
    private static readonly Measure[] NotCompared = [Measure.MassBefore, Measure.GuessedHeight];

    /// <summary>Every comparison of a class, bread by bread; none without a series, or where only one of a pair was measured.</summary>
    /// <remarks>
    /// What was measured in the same teams is compared pair by pair (<see cref="PairedDifference"/>); teams that share a series out have one
    /// bread each, and are compared as different teams.
    /// </remarks>
    internal static IReadOnlyList<SeriesMeasured> Of(IReadOnlyList<MeasuredBread> breads) =>
        [
            .. breads
                .Where(bread => bread is { ControlOf: null, Compared.Bread.Place.IsAsWritten: false })
                .SelectMany(bread =>
                    breads.FirstOrDefault(other =>
                        other.ControlOf is null && other.Compared.Bread.Formula.Id == bread.Compared.Bread.Place!.OfId
                    )
                        is not { } written
                        ? []
                        : bread
                            .Quantities.Where(quantity => !NotCompared.Contains(quantity.Asked.Measure))
                            .SelectMany(quantity =>
                                written
                                    .Quantities.Where(asked => asked.Asked.Measure == quantity.Asked.Measure)
                                    .Take(1)
                                    .Select(asked =>
                                        (
                                            Written: asked,
                                            Changed: quantity,
                                            Difference: UnpairedDifference.Of([.. quantity.TeamMeans.Values], [.. asked.TeamMeans.Values])
                                        )
                                    )
                            )
                            .Where(pair => pair.Difference is not null)
                            .Select(pair => new SeriesMeasured(pair.Written, pair.Changed, bread, pair.Difference!))
                ),
        ];
}
