using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.DoughTemperatures;

/// <summary>The temperature of a mixed dough from those of what goes into it, and back.</summary>
/// <remarks>
/// The sum rule of the trade: n factors count alike, n = 2 to 4 (water, and one to three of flour, room and preferment), and mixing adds a
/// friction factor: water = n × desired - the other factors - friction. A rule of thumb, not a heat balance: it leaves masses out. Source:
/// teaching material of a baking institute, common practice; Pizza Today, June 2018. The equation gives the same whether degrees are
/// Celsius or Fahrenheit, as long as friction is in degrees of the same kind.
/// </remarks>
public static class DoughTemperature
{
    /// <summary>Below this, dissolving and mixing leaves yeast alive: 55 °C to 60 °C kill it.</summary>
    private static readonly Temperature YeastDies = Temperature.FromCelsius(55);

    /// <summary>The warmest that yeast in contact with the water should meet: 41 °C to 46 °C for rehydrating active dry yeast.</summary>
    private static readonly Temperature HotForYeast = Temperature.FromCelsius(46);

    /// <summary>Nothing colder than this is reached by ice alone: at 0 °C it still takes up as much heat as water does over 80 K.</summary>
    private static readonly Temperature AllIce = Temperature.FromCelsius(-80);

    private const string YeastSource = "A. Gardiner, S. Wilson, The Inquisitive Cook (1998)";

    /// <summary>The water that brings the dough to <paramref name="desired"/>.</summary>
    /// <param name="desired">Of the mixed dough.</param>
    /// <param name="others">The factors besides the water: one to three.</param>
    /// <param name="friction">What mixing adds, as a term of this equation: see <see cref="Friction"/>.</param>
    /// <param name="withYeast">True if there is yeast that the water could kill.</param>
    public static Computed<LiquidTemperature> LiquidFor(
        Temperature desired,
        IReadOnlyList<TemperatureFactor> others,
        TemperatureDifference friction,
        bool withYeast = true
    )
    {
        ArgumentNullException.ThrowIfNull(others);
        if (others.Count is < 1 or > 3)
            return WrongCount(others.Count + 1);
        if (Odd(desired, others, friction) is { } odd)
            return odd;

        var n = others.Count + 1;
        var celsius = n * desired.Celsius - others.Sum(factor => factor.Temperature.Celsius) - friction.Kelvins;
        if (withYeast && celsius >= YeastDies.Celsius)
            return new Impossibility(
                "yeast-would-die",
                $"The liquid would have to be {Both(celsius)}, which kills yeast (55 °C to 60 °C).",
                "Warm the flour, mix longer or ask for a cooler dough."
            );
        if (celsius >= 100)
            return new Impossibility(
                "liquid-would-boil",
                $"The liquid would have to be {Both(celsius)}.",
                "No liquid water is that hot: warm the flour or ask for a cooler dough."
            );
        if (celsius < AllIce.Celsius)
            return new Impossibility(
                "colder-than-ice",
                $"The liquid would have to be as cold as {Both(celsius)}; all of it as ice cools like {Both(AllIce.Celsius)}.",
                "Chill the flour or mix with less friction."
            );

        return new LiquidTemperature(
            Temperature.FromCelsius(celsius),
            [.. AdviceOn(celsius, withYeast)],
            Explain(desired, others, friction, celsius)
        );
    }

    /// <summary>The friction factor that a trial dough shows.</summary>
    /// <param name="actual">The temperature that the trial dough came to.</param>
    /// <param name="all">Every factor as it was, the water too: two to four.</param>
    /// <remarks>friction = n × actual - all factors.</remarks>
    public static Computed<TemperatureDifference> Friction(Temperature actual, IReadOnlyList<TemperatureFactor> all)
    {
        ArgumentNullException.ThrowIfNull(all);
        if (all.Count is < 2 or > 4)
            return WrongCount(all.Count);
        if (Odd(actual, all, default) is { } odd)
            return odd;
        var friction = TemperatureDifference.FromKelvins(all.Count * actual.Celsius - all.Sum(factor => factor.Temperature.Celsius));
        return Explanation
            .Of(
                "Friction factor from a trial",
                "friction",
                "number of factors × dough temperature - all factors",
                $"{all.Count} × {Figures.Celsius(actual)} - ({Sum(all)})",
                $"{Figures.Show(friction.Kelvins)} °C",
                $"{Figures.Show(friction.Kelvins)} °C of difference are {Figures.Show(friction.FahrenheitDegrees)} °F of difference. It holds for this mixer, speed, time and batch size only."
            )
            .For(friction);
    }

    /// <summary>The temperature that the dough will come to: (all factors + friction) / n.</summary>
    /// <param name="all">Every factor, the water too: two to four.</param>
    /// <param name="friction">What mixing adds.</param>
    public static Computed<Temperature> Expected(IReadOnlyList<TemperatureFactor> all, TemperatureDifference friction)
    {
        ArgumentNullException.ThrowIfNull(all);
        if (all.Count is < 2 or > 4)
            return WrongCount(all.Count);
        if (Odd(default, all, friction) is { } odd)
            return odd;
        var expected = Temperature.FromCelsius((all.Sum(factor => factor.Temperature.Celsius) + friction.Kelvins) / all.Count);
        return Explanation
            .Of(
                "Dough temperature to expect",
                "dough",
                "(all factors + friction) / number of factors",
                $"({Sum(all)} + {Figures.Show(friction.Kelvins)} °C) / {all.Count}",
                Figures.Celsius(expected),
                "Sum rule: factors count alike, whatever their masses."
            )
            .For(expected);
    }

    private static string Sum(IEnumerable<TemperatureFactor> factors) =>
        string.Join(" + ", factors.Select(factor => Figures.Celsius(factor.Temperature)));

    /// <summary>
    /// Nothing in a bakery is colder than its freezer or hotter than its kettle before the oven, and no mixer heats a dough by more than
    /// this.
    /// </summary>
    private static Impossibility? Odd(Temperature dough, IEnumerable<TemperatureFactor> factors, TemperatureDifference friction) =>
        Sanity.Temperature(dough, 0, 100, "Dough")
        ?? factors
            .Select(factor => Sanity.Temperature(factor.Temperature, ColdestCelsius, 100, factor.Name))
            .FirstOrDefault(odd => odd is not null)
        ?? Sanity.Number(friction.Kelvins, LeastFriction, MostFriction, "Friction, in °C", "friction-out-of-range");

    /// <summary>A cold bowl takes a little heat away. Water as ice counts as down to -80 °C; see <see cref="AllIce"/>.</summary>
    private const double ColdestCelsius = -80;
    private const double LeastFriction = -20;
    private const double MostFriction = 100;

    private static IEnumerable<Advice> AdviceOn(double celsius, bool withYeast)
    {
        if (celsius < 0)
            yield return new("needs-ice", $"No tap runs at {Both(celsius)}: weigh part of the water as ice.", "heat balance; see Ice");
        else if (celsius < 4)
            yield return new(
                "near-freezing",
                "Water this cold is hard to come by without ice: chill it overnight or weigh part of it as ice.",
                "common practice, no source"
            );
        if (withYeast && celsius > HotForYeast.Celsius)
            yield return new(
                "hot-for-yeast",
                $"Water above 46 °C (115 °F) harms yeast that meets it directly: mix the yeast into the flour first.",
                YeastSource
            );
    }

    private static Explanation Explain(
        Temperature desired,
        IReadOnlyList<TemperatureFactor> others,
        TemperatureDifference friction,
        double celsius
    )
    {
        var n = others.Count + 1;
        var names = string.Join(" + ", others.Select(factor => factor.Name));
        var sum = others.Sum(factor => factor.Temperature.Celsius);
        return new(
            "Liquid for the desired dough temperature",
            [
                new(
                    "total",
                    $"{n} × desired dough temperature",
                    $"{n} × {Figures.Show(desired.Celsius)} °C",
                    $"{Figures.Show(n * desired.Celsius)} °C"
                ),
                new(
                    "known factors",
                    names,
                    string.Join(" + ", others.Select(factor => $"{Figures.Show(factor.Temperature.Celsius)} °C")),
                    $"{Figures.Show(sum)} °C"
                ),
                new(
                    "liquid",
                    "total - known factors - friction",
                    $"{Figures.Show(n * desired.Celsius)} °C - {Figures.Show(sum)} °C - {Figures.Show(friction.Kelvins)} °C",
                    Both(celsius)
                ),
            ],
            $"Sum rule with {n} factors that count alike; a rule of thumb that leaves masses out."
        );
    }

    private static string Both(double celsius) => $"{Figures.Show(celsius)} °C ({Figures.Exact(celsius * 1.8 + 32, 0)} °F)";

    private static Impossibility WrongCount(int count) =>
        new(
            "wrong-number-of-factors",
            $"{count} temperature factors were given, the liquid among them.",
            "The rule takes 2 to 4: liquid, flour, room, preferment."
        );
}
