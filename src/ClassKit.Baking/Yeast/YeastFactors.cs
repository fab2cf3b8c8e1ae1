using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Yeast;

/// <summary>How much of one kind of yeast stands for another. Published factors disagree, so they are a named setting.</summary>
/// <param name="Name">What the setting is called.</param>
/// <param name="ActiveDryPerFresh">Grams of active dry yeast for a gram of fresh; above 0.</param>
/// <param name="InstantPerFresh">Grams of instant yeast for a gram of fresh; above 0.</param>
/// <param name="Source">Where it is published.</param>
public sealed record YeastFactors(string Name, double ActiveDryPerFresh, double InstantPerFresh, string Source)
{
    /// <summary>Fresh × 0.4 is active dry, × 0.33 is instant: the default, as in cook books.</summary>
    public static YeastFactors CookBook { get; } = new("cook book", 0.4, 0.33, "cook books: \"Yeast conversions: fresh to dry\"");

    /// <summary>The same mass of yeast solids: 30 % in fresh, 92 % in active dry, 95 % in instant.</summary>
    public static YeastFactors EqualSolids { get; } = new("equal solids", 0.30 / 0.92, 0.30 / 0.95, "AACC Approved Method 89-01.01");

    /// <summary>A third of the fresh yeast, whichever the dry.</summary>
    public static YeastFactors OneThird { get; } =
        new(
            "one third",
            1 / 3.0,
            1 / 3.0,
            "BC Cook Articulation Committee, Understanding Ingredients for the Canadian Baker (2015), ch. 39, CC BY 4.0"
        );

    /// <summary>The older 2/3 oz of fresh for a 1/4 oz packet of dry.</summary>
    public static YeastFactors OlderPackets { get; } =
        new("older packets", 3 / 8.0, 3 / 8.0, "packets of older years, quoted from memory in a forum: weak");

    /// <summary>All of the settings, the default first.</summary>
    public static IReadOnlyList<YeastFactors> All { get; } = [CookBook, EqualSolids, OneThird, OlderPackets];

    /// <summary>The mass of one kind that stands for a mass of another.</summary>
    /// <param name="yeast">Not negative.</param>
    /// <param name="from">The kind that there is.</param>
    /// <param name="to">The kind that is wanted.</param>
    public Computed<Mass> Convert(Mass yeast, YeastKind from, YeastKind to)
    {
        if (
            (
                Sanity.Mass(yeast, "yeast", "negative-mass", orNone: true)
                ?? Sanity.Number(PerFresh(from), LeastFactor, 1, $"Factor of {Name}", "bad-factor")
                ?? Sanity.Number(PerFresh(to), LeastFactor, 1, $"Factor of {Name}", "bad-factor")
            ) is
            { } odd
        )
            return odd;
        var converted = yeast * (PerFresh(to) / PerFresh(from));
        return Explanation
            .Of(
                $"Yeast, by {Name}",
                "yeast",
                "yeast × factor to / factor from",
                $"{Figures.Grams(yeast)} × {Figures.Exact(PerFresh(to), 4)} / {Figures.Exact(PerFresh(from), 4)}",
                Figures.Grams(converted),
                $"Factors are grams for a gram of fresh yeast: {Source}."
            )
            .For(converted);
    }

    /// <summary>No dry yeast is a tenth of fresh.</summary>
    private const double LeastFactor = 0.1;

    private double PerFresh(YeastKind kind) =>
        kind switch
        {
            YeastKind.Fresh => 1,
            YeastKind.ActiveDry => ActiveDryPerFresh,
            YeastKind.Instant => InstantPerFresh,
        };
}
