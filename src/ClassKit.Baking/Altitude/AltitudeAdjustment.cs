namespace ClassKit.Baking;

/// <summary>How cakes and quick breads are changed for a high kitchen: starting points for a trial, not a computation.</summary>
/// <param name="FromFeet">The altitude that the row is printed for.</param>
/// <param name="PowderLess">Teaspoons less for each teaspoon of baking powder.</param>
/// <param name="SugarLess">Tablespoons less for each cup of sugar.</param>
/// <param name="LiquidMore">Tablespoons more for each cup of liquid.</param>
/// <param name="OvenWarmer">Degrees Fahrenheit more in the oven.</param>
/// <remarks>
/// An extension table (Colorado State University, USDA) reprinted at pastryscoop.com, "High altitude baking": rows for 3000, 5000 and 7000 ft.
/// The oven's 25 °F are that table's; the university's release of 2002-12-12 says 15 °F to 20 °F. Another reprint has sugar 0 to 2 tbsp at 5000 ft.
/// </remarks>
public sealed record AltitudeAdjustment(double FromFeet, PublishedRange PowderLess, PublishedRange SugarLess, PublishedRange LiquidMore, PublishedRange OvenWarmer)
{
    private const double MetresPerFoot = 0.3048;

    /// <summary>Where the table came from.</summary>
    public const string Source = "Colorado State University Extension and USDA, reprinted at pastryscoop.com; publicrelations.colostate.edu, 2002-12-12";

    private static readonly PublishedRange Oven = new(15, 25);

    /// <summary>The table, lowest row first.</summary>
    public static IReadOnlyList<AltitudeAdjustment> Table { get; } =
    [
        new(3000, new(1 / 8.0, 1 / 8.0), new(0.5, 1), new(1, 2), Oven),
        new(5000, new(1 / 8.0, 1 / 4.0), new(0.5, 2), new(2, 4), Oven),
        new(7000, new(1 / 4.0, 1 / 4.0), new(1, 3), new(3, 4), Oven),
    ];

    /// <summary>The row for an altitude: the highest one at or below it; null below 3000 ft (914 m), where nothing is changed.</summary>
    public static AltitudeAdjustment? For(double metres) => Table.LastOrDefault(row => metres >= row.FromFeet * MetresPerFoot - 1e-9);

    /// <summary>Baking powder or soda after the change, in the unit given.</summary>
    public PublishedRange Leavening(double amount) => new(amount * (1 - PowderLess.High), amount * (1 - PowderLess.Low));

    /// <summary>Sugar after the change, in the unit given.</summary>
    public PublishedRange Sugar(double amount) => new(amount * (1 - SugarLess.High / 16), amount * (1 - SugarLess.Low / 16));

    /// <summary>Liquid after the change, in the unit given.</summary>
    public PublishedRange Liquid(double amount) => new(amount * (1 + LiquidMore.Low / 16), amount * (1 + LiquidMore.High / 16));
}
