using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;
using ClassKit.Lessons.Observations;
using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Measured;

/// <summary>What a class measured of one bread.</summary>
/// <param name="Compared">The bread with its gas.</param>
/// <param name="Quantities">Everything that was asked, in the lesson's order.</param>
public sealed record MeasuredBread(LeaveningComparison Compared, IReadOnlyList<MeasuredQuantity> Quantities)
{
    /// <summary>The height; null where it is not measured of this bread.</summary>
    public MeasuredQuantity? Height => Quantities.FirstOrDefault(quantity => quantity.Asked.Measure == Measure.Height);

    /// <summary>The id of the bread whose control it is; null for a bread of the lesson.</summary>
    public string? ControlOf { get; private init; }

    /// <summary>What is measured in a lesson: its breads, each with its bowl and with its control behind it where it has one.</summary>
    internal static IEnumerable<(LeaveningComparison Compared, MixBalance? Mix, string? ControlOf)> AskedOf(ComputedPack pack)
    {
        foreach (var (compared, card) in pack.Comparison.Zip(pack.Cards))
        {
            yield return (compared, card.Mix, null);
            if (pack.ControlOf(compared.Bread) is { } control)
                yield return (control.BehindOf(compared.Bread), null, compared.Bread.Formula.Id);
        }
    }

    internal static MeasuredBread Of(
        (LeaveningComparison Compared, MixBalance? Mix, string? ControlOf) asked,
        ComputedPack pack,
        IReadOnlyList<TeamMeasurements> teams
    )
    {
        var (compared, mix, controlOf) = asked;
        ILookup<Measure, (string Team, Measurement Value)> measured = teams
            .SelectMany(team => team.Values.Where(value => value.Bread == compared.Bread.Formula.Id).Select(value => (team.Team, value)))
            .ToLookup(one => one.value.Measure);
        return new(
            compared,
            [
                .. mix is null
                    ? (IEnumerable<MeasuredQuantity>)[]
                    :
                    [
                        Quantity(AskedOfEveryBread.Guess, Prediction.Of(Measure.GuessedHeight, compared, pack.BoilingPoint)?.Value),
                        Quantity(AskedOfEveryBread.Mix, mix.Mixed.Map(mixed => mixed.Celsius)),
                    ],
                .. compared.Bread.Observations.Select(observed =>
                    MeasuredOf(observed, Expected(observed.Measure, compared, pack, measured))
                ),
            ]
        )
        {
            ControlOf = controlOf,
        };

        MeasuredQuantity Quantity(Observation observed, Band<double>? expected) =>
            MeasuredOf(observed, expected?.Map(ObservedUnit.For(observed.Measure, pack.Class.Units).Of));

        MeasuredQuantity MeasuredOf(Observation observed, Band<double>? expected) =>
            MeasuredBread.Quantity(observed, expected, pack, measured);
    }

    private static MeasuredQuantity Quantity(
        Observation observed,
        Band<double>? expected,
        ComputedPack pack,
        ILookup<Measure, (string Team, Measurement Value)> measured
    )
    {
        var unit = ObservedUnit.For(observed.Measure, pack.Class.Units);
        var values = measured[observed.Measure].ToList();
        var far = FarFromTheRest.In([.. values.Select(one => one.Value.Value)], Math.Pow(10, -unit.Decimals));
        return new(
            observed,
            unit,
            expected,
            [
                .. values.Zip(
                    far,
                    // A guess far from the others is a guess; there is nothing to ask whoever made it.
                    (one, isFar) =>
                        new MeasuredPoint(one.Team, one.Value.Piece, one.Value.Value, isFar && observed.Measure != Measure.GuessedHeight)
                ),
            ]
        );
    }

    /// <summary>
    /// What is left is predicted from what was measured before, where something was: a portion filled too large is no smaller loss. What
    /// lies far from the rest of it may be a slip, and predicts nothing.
    /// </summary>
    private static Band<double>? Expected(
        Measure measure,
        LeaveningComparison compared,
        ComputedPack pack,
        ILookup<Measure, (string Team, Measurement Value)> measured
    )
    {
        if (Prediction.Of(measure, compared, pack.BoilingPoint) is not { } prediction)
            return null;
        if (measure != Measure.MassAfter || !measured[Measure.MassBefore].Any())
            return prediction.Value.Map(ObservedUnit.For(measure, pack.Class.Units).Of);
        List<(string Team, Measurement Value)> all = [.. measured[Measure.MassBefore]];
        var far = FarFromTheRest.In(
            [.. all.Select(one => one.Value.Value)],
            Math.Pow(10, -ObservedUnit.For(Measure.MassBefore, pack.Class.Units).Decimals)
        );
        var before = all.Where((_, at) => !far[at]).GroupBy(one => one.Team).Average(team => team.Average(one => one.Value.Value));
        var loss = Prediction.BakeLoss(compared);
        return new(before * (1 - loss.High), before * (1 - loss.Typical), before * (1 - loss.Low));
    }
}
