using ClassKit.Baking.Cooking;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.Altitude;

/// <summary>What a way of cooking asks for in a high kitchen, where water boils sooner and steam is cooler.</summary>
public static class HighCooking
{
    /// <summary>The code of the advice that gives fat another temperature.</summary>
    public const string CoolerFat = "fat-cooler";

    /// <summary>The code of the advice that gives steam and boiling water longer.</summary>
    public const string CoolerSteam = "steam-cooler";

    private const double FahrenheitLower = 3;
    private const double Set = 5;
    private const double PerMetres = 1000 * AltitudeTable.MetresPerFoot;

    /// <summary>
    /// Frying fat in a high kitchen: 3 °F lower for each 1,000 ft, to 5 °C as a fryer is set; below 3000 ft as it is written.
    /// </summary>
    /// <param name="atSeaLevel">As written.</param>
    /// <param name="metres">Above sea level.</param>
    /// <remarks>
    /// University of Wyoming Extension, B-734, "Adjusting deep fat frying temperatures": a rough guide. Its example: 370 °F become 355 °F
    /// at 5,000 ft.
    /// </remarks>
    public static Temperature FatAt(Temperature atSeaLevel, double metres) =>
        metres < AltitudeTable.LowestMetres
            ? atSeaLevel
            : Temperature.FromCelsius(
                Set
                    * Math.Round(
                        Temperature.FromFahrenheit(atSeaLevel.Fahrenheit - FahrenheitLower * metres / PerMetres).Celsius / Set,
                        MidpointRounding.AwayFromZero
                    )
            );

    /// <summary>True where the published tables for cakes and quick breads hold: what hot air bakes.</summary>
    public static bool IsOven(CookingWay way) => way is CookingWay.Oven or CookingWay.PizzaOven or CookingWay.CombiOven;

    /// <summary>What to mind of one heat; nothing below 3000 ft, and where no more is known than of the oven.</summary>
    internal static IEnumerable<Advice> AdviceOn(GivenHeat heat, double metres, Pressure pressure)
    {
        if (metres < AltitudeTable.LowestMetres)
            yield break;
        var boiling = Figures.Celsius(Saturation.BoilingPoint(pressure));
        if (heat is { Way: CookingWay.Fryer, At: { } fat })
        {
            yield return new(
                CoolerFat,
                $"Fat as hot as at sea level browns the outside before the middle is done: about {Figures.Celsius(FatAt(fat, metres))} here and not {Figures.Celsius(fat)}, and longer. The first one is cut, and the next stay in until such a middle is done.",
                "University of Wyoming Extension, B-734: about 3 °F lower for each 1,000 ft, a rough guide; longer: common practice, no source"
            );
        }
        if (heat.Way == CookingWay.Steamer)
            yield return new(
                CoolerSteam,
                $"Steam is at {boiling} here and not at 100 °C: some minutes longer, until the probe says that the middle is done.",
                "boiling point: IAPWS-IF97 and US Standard Atmosphere 1976; longer: common practice, no source"
            );
        if (heat.Way == CookingWay.BoilingWater)
            yield return new(
                CoolerSteam,
                $"Water boils at {boiling} here and not at 100 °C: what cooks in it takes longer.",
                "boiling point: IAPWS-IF97 and US Standard Atmosphere 1976; longer: Colorado State University Extension, \"High altitude food preparation\""
            );
    }
}
