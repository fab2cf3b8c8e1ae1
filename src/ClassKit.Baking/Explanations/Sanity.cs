using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Explanations;

/// <summary>Asks whether what was typed makes sense at all, before anything is computed from it.</summary>
internal static class Sanity
{
    /// <summary>The heaviest thing taken seriously, 100 t: anything above is a slip of the unit.</summary>
    public static readonly Mass Heaviest = Quantities.Mass.FromKilograms(100_000);

    /// <summary>A millionth of a milligram: less than that is nothing.</summary>
    private const double LightestGrams = 1e-9;

    /// <summary>The most money taken seriously.</summary>
    private const decimal MostMoney = 1_000_000_000;

    /// <summary>The thinnest and the thickest air in which anybody bakes: above Everest, and a pressure cooker.</summary>
    private const double LeastPascals = 20_000;
    private const double MostPascals = 300_000;

    /// <summary>A mass above 0 g, or not below if <paramref name="orNone"/>.</summary>
    public static Impossibility? Mass(Mass mass, string what, string code, bool orNone = false)
    {
        if (mass.Grams < 0 || (mass.Grams < LightestGrams && !orNone))
            return new(
                code,
                $"{Figures.Grams(mass)} of {what} were given.",
                orNone ? "Give a mass that is not negative." : "Give a mass above 0 g."
            );
        return mass > Heaviest
            ? new(
                "too-much",
                $"{Figures.Exact(mass.Kilograms, 0)} kg of {what} were given.",
                $"ClassKit computes up to {Figures.Exact(Heaviest.Kilograms, 0)} kg; look at the unit."
            )
            : null;
    }

    /// <summary>A number from <paramref name="low"/> to <paramref name="high"/>, both allowed.</summary>
    public static Impossibility? Number(double number, double low, double high, string what, string code) =>
        number >= low && number <= high
            ? null
            : new(
                code,
                $"{what}: {Figures.Exact(number)} was given.",
                $"Give a number from {Figures.Exact(low)} to {Figures.Exact(high)}."
            );

    /// <summary>A temperature from <paramref name="low"/> to <paramref name="high"/>, both allowed, in °C.</summary>
    public static Impossibility? Temperature(Temperature temperature, double low, double high, string what) =>
        temperature.Celsius >= low && temperature.Celsius <= high
            ? null
            : new(
                "temperature-out-of-range",
                $"{what}: {Figures.Celsius(temperature)} was given.",
                $"Give a temperature from {Figures.Exact(low)} °C to {Figures.Exact(high)} °C; look at the unit."
            );

    /// <summary>A pressure of the air.</summary>
    public static Impossibility? Air(Pressure pressure) =>
        pressure.Pascals is >= LeastPascals and <= MostPascals
            ? null
            : new(
                "pressure-out-of-range",
                $"An air pressure of {Figures.Exact(pressure.Hectopascals)} hPa was given.",
                $"Give one from {Figures.Exact(LeastPascals / 100)} hPa to {Figures.Exact(MostPascals / 100)} hPa; at sea level it is 1,013 hPa."
            );

    /// <summary>An amount of money that is not negative.</summary>
    public static Impossibility? Money(Money money, string what) =>
        money.Amount is >= 0 and <= MostMoney
            ? null
            : new(
                "money-out-of-range",
                $"{what}: {Figures.Amount(money)} was given.",
                $"Give an amount from 0 to {Figures.Exact((double)MostMoney, 0)}."
            );
}
