using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.HeatBalances;

/// <summary>The temperature of what is mixed, from the heat that each part brings.</summary>
/// <remarks>
/// Method of mixtures: no heat is lost, so the mixed temperature is the mean of all temperatures weighted by mass × specific heat. Unlike
/// the sum rule of <see cref="DoughTemperature"/> it knows masses, and a cold egg from warm flour. Hydration of flour and setting of fat,
/// which warm a dough by a kelvin or less, are left out.
/// </remarks>
public static class HeatBalance
{
    private const double Coldest = -40;
    private const double Hottest = 100;

    /// <summary>A dough of 100 t.</summary>
    private const double MostJoulesPerKelvin = 5e8;
    private const double LeastJoulesPerKelvin = 1e-9;

    private const string Model = "Heat balance with each ingredient's specific heat by its composition (Choi and Okos 1986).";

    /// <summary>What everything comes to together.</summary>
    /// <param name="parts">At least one.</param>
    public static Computed<Temperature> Mixed(IReadOnlyList<HeatPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        if (Odd(parts) is { } odd)
            return odd;
        var heat = parts.Sum(part => part.JoulesPerKelvin);
        var mixed = Temperature.FromCelsius(Warmth(parts) / heat);
        return new Explanation(
            "Temperature of the mix",
            [
                All(parts, heat),
                new(
                    "mixed",
                    "sum of heat for a kelvin × temperature / all heat for a kelvin",
                    $"({Terms(parts)}) / {Figures.Show(heat)}",
                    Figures.Celsius(mixed)
                ),
            ],
            Model
        ).For(mixed);
    }

    /// <summary>How warm one more part has to be for everything to come to a temperature.</summary>
    /// <param name="wanted">Of everything together.</param>
    /// <param name="others">What else goes in; at least one.</param>
    /// <param name="joulesPerKelvin">The heat that warms the asked part by a kelvin; above 0.</param>
    public static Computed<Temperature> PartFor(Temperature wanted, IReadOnlyList<HeatPart> others, double joulesPerKelvin)
    {
        ArgumentNullException.ThrowIfNull(others);
        if ((Odd(others) ?? Sanity.Temperature(wanted, Coldest, Hottest, "Mix") ?? Heat(joulesPerKelvin, "The part")) is { } odd)
            return odd;
        var heat = others.Sum(part => part.JoulesPerKelvin);
        var celsius = (wanted.Celsius * (heat + joulesPerKelvin) - Warmth(others)) / joulesPerKelvin;
        if (!(celsius is >= Coldest and <= Hottest))
            return new Impossibility(
                "mix-out-of-reach",
                $"It would have to be at {Figures.Show(celsius)} °C.",
                "Warm or cool the other parts as well, or ask for another temperature."
            );
        var part = Temperature.FromCelsius(celsius);
        return new Explanation(
            "Temperature of one part",
            [
                All(others, heat),
                new(
                    "part",
                    "(wanted × all heat for a kelvin - what the others bring) / heat for a kelvin of the part",
                    $"({Signed(wanted)} × ({Figures.Show(heat)} + {Figures.Show(joulesPerKelvin)}) - ({Terms(others)})) / {Figures.Show(joulesPerKelvin)}",
                    Figures.Celsius(part)
                ),
            ],
            Model
        ).For(part);
    }

    private static double Warmth(IReadOnlyList<HeatPart> parts) => parts.Sum(part => part.JoulesPerKelvin * part.Temperature.Celsius);

    private static ExplainedStep All(IReadOnlyList<HeatPart> parts, double heat) =>
        new(
            "heat for a kelvin, in J",
            string.Join(" + ", parts.Select(part => part.Name)),
            string.Join(" + ", parts.Select(part => Figures.Show(part.JoulesPerKelvin))),
            Figures.Show(heat)
        );

    private static string Terms(IEnumerable<HeatPart> parts) =>
        string.Join(" + ", parts.Select(part => $"{Figures.Show(part.JoulesPerKelvin)} × {Signed(part.Temperature)}"));

    private static string Signed(Temperature temperature) =>
        temperature.Celsius < 0 ? $"({Figures.Show(temperature.Celsius)})" : Figures.Show(temperature.Celsius);

    private static Impossibility? Odd(IReadOnlyList<HeatPart> parts) =>
        parts.Count == 0
            ? new("nothing-to-mix", "Nothing is mixed.", "Give at least one part with its heat.")
            : parts
                .Select(part => Sanity.Temperature(part.Temperature, Coldest, Hottest, part.Name) ?? Heat(part.JoulesPerKelvin, part.Name))
                .FirstOrDefault(odd => odd is not null);

    private static Impossibility? Heat(double joulesPerKelvin, string name) =>
        Sanity.Number(joulesPerKelvin, LeastJoulesPerKelvin, MostJoulesPerKelvin, $"{name}, in J for a kelvin", "heat-out-of-range");
}
