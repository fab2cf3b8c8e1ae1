using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Altitude;

/// <summary>A published table of changes for high kitchens. Tables disagree, so which one is used is a named setting.</summary>
/// <param name="Name">What the setting is called.</param>
/// <param name="Rows">The lowest first.</param>
/// <param name="Source">Where it is published.</param>
public sealed record AltitudeTable(string Name, IReadOnlyList<AltitudeAdjustment> Rows, string Source)
{
    /// <summary>Metres in an international foot, exact (NIST SP 811, appendix B).</summary>
    public const double MetresPerFoot = 0.3048;

    /// <summary>Below this, 3000 ft, no table changes anything.</summary>
    public const double LowestMetres = 3000 * MetresPerFoot;

    private static readonly PublishedRange Oven = new(15, 25);

    /// <summary>The table of an extension service, rows for 3000, 5000 and 7000 ft: the default.</summary>
    /// <remarks>
    /// The oven's 25 °F are that table's; the university's release of 2002-12-12 says 15 °F to 20 °F. Another reprint has sugar 0 to 2 tbsp
    /// at 5000 ft.
    /// </remarks>
    public static AltitudeTable Extension { get; } =
        new(
            "extension service",
            [
                new(3000, new(1 / 8.0, 1 / 8.0), new(0.5, 1), new(1, 2), Oven),
                new(5000, new(1 / 8.0, 1 / 4.0), new(0.5, 2), new(2, 4), Oven),
                new(7000, new(1 / 4.0, 1 / 4.0), new(1, 3), new(3, 4), Oven),
            ],
            "Colorado State University Extension and US Department of Agriculture, table for cakes, as reprinted; Colorado State University, news release of 12 December 2002"
        );

    /// <summary>A cook book's table, with more flour and a row for 10 000 ft.</summary>
    /// <remarks>
    /// A table in circulation among bakers, common practice, no source. The oven is not in it; the same 15 °F to 25 °F are taken. Less fat
    /// at 10 000 ft, "may not be necessary", is left out.
    /// </remarks>
    public static AltitudeTable CookBook { get; } =
        new(
            "cook book",
            [
                new(3000, new(0, 1 / 8.0), new(0, 1), new(0, 2), Oven) { FlourMore = new(0, 1) },
                new(5000, new(1 / 8.0, 1 / 4.0), new(0, 2), new(2, 4), Oven) { FlourMore = new(0, 2) },
                new(7000, new(1 / 4.0, 1 / 2.0), new(2, 4), new(3, 4), Oven) { FlourMore = new(3, 4) },
                new(10_000, new(1 / 2.0, 2 / 3.0), new(3, 4), new(3, 4), Oven) { FlourMore = new(2, 4) },
            ],
            "S. Purdy, table for high altitude, as reprinted"
        );

    /// <summary>All of the settings, the default first.</summary>
    public static IReadOnlyList<AltitudeTable> All { get; } = [Extension, CookBook];

    /// <summary>
    /// The changes for an altitude, in proportion between the two rows around it; those of the last row above it, and null below the
    /// lowest, where nothing is changed.
    /// </summary>
    /// <remarks>
    /// A table has a row every 2000 ft, so that a kitchen just below one would be treated as one far lower; between rows nothing is
    /// published.
    /// </remarks>
    public AltitudeAdjustment? For(double metres)
    {
        // A millimetre: 5000 ft written in metres is 5000 ft.
        var feet = Math.Round(metres / MetresPerFoot, 2, MidpointRounding.AwayFromZero);
        var below = Rows.LastOrDefault(row => feet >= row.FromFeet);
        var above = Rows.FirstOrDefault(row => feet < row.FromFeet);
        return below is null || above is null
            ? below
            : below.Towards(above, (feet - below.FromFeet) / (above.FromFeet - below.FromFeet)) with
            {
                FromFeet = feet,
            };
    }
}
