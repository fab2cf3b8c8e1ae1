using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Chemistry;

/// <summary>
/// How much of a baking powder's gas comes before the oven and how much on warming. Tins say single- or double-acting, so it is a named
/// setting.
/// </summary>
/// <param name="Name">What the setting is called.</param>
/// <param name="BenchShare">The share of the available gas that comes on the bench, 0 to 1.</param>
/// <param name="WakesAt">Here heat begins to set the rest free.</param>
/// <param name="DoneAt">Here all of it is out.</param>
/// <param name="Source">Where it is published.</param>
/// <remarks>
/// Between the two temperatures the rest comes evenly: a simplification. Which acids do it: see <see cref="LeaveningAcid.Release"/>.
/// </remarks>
public sealed record PowderRelease(string Name, Band<double> BenchShare, Temperature WakesAt, Temperature DoneAt, string Source)
{
    /// <summary>Some on wetting, the rest on warming: the default, and nearly all that is sold to households.</summary>
    public static PowderRelease DoubleActing { get; } =
        new(
            "double-acting",
            new(0.2, 0.3, 0.4),
            Temperature.FromCelsius(38),
            Temperature.FromCelsius(74),
            "in two steps: BAKERpedia, \"Baking Powder\", and H. McGee, On Food and Cooking (2004); a third, more or less, on the bench: from memory"
        );

    /// <summary>Nearly everything on wetting: batter must go into the oven at once.</summary>
    public static PowderRelease SingleActing { get; } =
        new(
            "single-acting",
            new(0.8, 0.9, 1.0),
            Temperature.FromCelsius(38),
            Temperature.FromCelsius(74),
            "needs moisture only, most of it in the first minutes: BAKERpedia, \"Baking Powder\"; shares from memory"
        );

    /// <summary>Monocalcium phosphate alone: most of it on wetting, the rest on warming.</summary>
    public static PowderRelease Phosphate { get; } =
        new(
            "straight-phosphate",
            new(0.5, 0.65, 0.8),
            Temperature.FromCelsius(38),
            Temperature.FromCelsius(74),
            "monocalcium phosphate acts at mixing: H. McGee, On Food and Cooking (2004); about two thirds on the bench: from memory"
        );

    /// <summary>All of the settings, the default first.</summary>
    public static IReadOnlyList<PowderRelease> All { get; } = [DoubleActing, SingleActing, Phosphate];

    /// <summary>The share of the available gas that is out once a batter has come to a temperature.</summary>
    /// <param name="batter">0 °C to 100 °C.</param>
    public Computed<Band<double>> ShareAt(Temperature batter)
    {
        if (
            (
                Sanity.Temperature(batter, 0, 100, "Batter")
                ?? (
                    WakesAt.Celsius < DoneAt.Celsius
                        ? null
                        : new Impossibility(
                            "bad-release",
                            $"{Name} wakes at {Figures.Celsius(WakesAt)} and is done at {Figures.Celsius(DoneAt)}.",
                            "It has to wake before it is done."
                        )
                )
            ) is
            { } odd
        )
            return odd;
        var way = Math.Clamp((batter.Celsius - WakesAt.Celsius) / (DoneAt.Celsius - WakesAt.Celsius), 0, 1);
        var share = BenchShare.Map(bench => bench + (1 - bench) * way);
        return new Explanation(
            $"Gas out of {Name} powder",
            [
                ExplainedStep.Given(
                    "way from waking to done",
                    $"what is left of {Figures.Celsius(WakesAt)} to {Figures.Celsius(DoneAt)} is behind it",
                    Figures.Percent(way)
                ),
                new(
                    "share out",
                    "on the bench + the rest × way",
                    $"{Figures.Percent(BenchShare.Typical)} + (1 - {Figures.Percent(BenchShare.Typical)}) × {Figures.Percent(way)}",
                    Figures.Percent(share.Typical)
                ),
            ],
            Source
        ).For(share);
    }
}
