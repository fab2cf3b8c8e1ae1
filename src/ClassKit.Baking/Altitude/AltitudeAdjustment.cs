using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Altitude;

/// <summary>
/// How cakes and quick breads are changed for a high kitchen: from an <see cref="AltitudeTable"/>. Starting points for a trial, not a
/// computation.
/// </summary>
/// <param name="FromFeet">The altitude that it is for: that of a printed row, or one between two of them.</param>
/// <param name="PowderLess">Teaspoons less for each teaspoon of baking powder or soda.</param>
/// <param name="SugarLess">Tablespoons less for each cup of sugar.</param>
/// <param name="LiquidMore">Tablespoons more for each cup of liquid.</param>
/// <param name="OvenWarmer">Degrees Fahrenheit more in the oven.</param>
public sealed record AltitudeAdjustment(
    double FromFeet,
    PublishedRange PowderLess,
    PublishedRange SugarLess,
    PublishedRange LiquidMore,
    PublishedRange OvenWarmer
)
{
    private const double TablespoonsPerCup = 16;

    /// <summary>Tablespoons more for each cup of flour; 0 where the table says nothing of it.</summary>
    public PublishedRange FlourMore { get; init; }

    /// <summary>Between this row and a higher one, each end of each range in proportion.</summary>
    internal AltitudeAdjustment Towards(AltitudeAdjustment above, double way)
    {
        return new(
            FromFeet + (above.FromFeet - FromFeet) * way,
            Between(PowderLess, above.PowderLess),
            Between(SugarLess, above.SugarLess),
            Between(LiquidMore, above.LiquidMore),
            Between(OvenWarmer, above.OvenWarmer)
        )
        {
            FlourMore = Between(FlourMore, above.FlourMore),
        };

        PublishedRange Between(PublishedRange low, PublishedRange high) =>
            new(low.Low + (high.Low - low.Low) * way, low.High + (high.High - low.High) * way);
    }

    /// <summary>The row of the default table for an altitude; null below 3000 ft (914 m), where nothing is changed.</summary>
    public static AltitudeAdjustment? For(double metres) => AltitudeTable.Extension.For(metres);

    /// <summary>Baking powder or soda after the change, in the unit given.</summary>
    public PublishedRange Leavening(double amount) => new(amount * (1 - PowderLess.High), amount * (1 - PowderLess.Low));

    /// <summary>Sugar after the change, in the unit given.</summary>
    public PublishedRange Sugar(double amount) =>
        new(amount * (1 - SugarLess.High / TablespoonsPerCup), amount * (1 - SugarLess.Low / TablespoonsPerCup));

    /// <summary>Liquid after the change, in the unit given.</summary>
    public PublishedRange Liquid(double amount) =>
        new(amount * (1 + LiquidMore.Low / TablespoonsPerCup), amount * (1 + LiquidMore.High / TablespoonsPerCup));

    /// <summary>Flour after the change, in the unit given.</summary>
    public PublishedRange Flour(double amount) =>
        new(amount * (1 + FlourMore.Low / TablespoonsPerCup), amount * (1 + FlourMore.High / TablespoonsPerCup));
}
