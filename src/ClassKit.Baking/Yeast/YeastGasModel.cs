using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Yeast;

/// <summary>How fast yeast makes gas in dough. Strains, doughs and meters differ, so every result is a band.</summary>
/// <param name="MillimolesPerHour">Per gram of yeast solids, in lean dough at <paramref name="Reference"/>. 2.8 % of pressed yeast gave 1,200 mL
/// of gas in two hours in a rheofermentometer: A. M. Rincón et al., Appl. Environ. Microbiol. 67 (2001) 4279, table 3. With 250 g of flour at
/// 28.5 °C and 30 % of solids, from memory of that method, with what the water keeps and the lag, that is 17. A quarter either way: from
/// memory.</param>
/// <param name="Reference">The temperature of that rate.</param>
/// <param name="GrowthPerDegree">The rate's growth per kelvin. Typical: 10 %, Sosland Publishing, Bake, "The science of fermentation". Low:
/// a doubling takes 17 °F, bakers' rule, common practice, no source.</param>
/// <param name="Optimum">Here the rate stops growing. 32 °C to 40 °C, Sosland Publishing, Bake, "The science of fermentation".</param>
/// <param name="Decline">Here it begins to fall, in a straight line.</param>
/// <param name="Death">Here it is 0. 55 °C to 60 °C, A. Gardiner and S. Wilson, The Inquisitive Cook, 1998.</param>
/// <param name="LagMinutes">Before the first gas, while dry yeast takes up water and all yeast gets used to the dough; in truth a slow start.
/// From memory.</param>
/// <param name="SweetPercent">Sugar, of the flour, above which yeast slows down: 5 %, Marek and Bushuk, Cereal Chem. 44 (1967) 300; common
/// practice has it slower above 6 % and much slower above 10 %.</param>
/// <param name="SlowdownPerPercent">The share of the rate lost for each per cent of sugar above that. From memory.</param>
public sealed record YeastGasModel(
    Band<double> MillimolesPerHour,
    Temperature Reference,
    Band<double> GrowthPerDegree,
    Temperature Optimum,
    Temperature Decline,
    Temperature Death,
    double LagMinutes,
    double SweetPercent,
    double SlowdownPerPercent
)
{
    /// <summary>Even syrup leaves some activity.</summary>
    private const double LeastActivity = 0.1;

    /// <summary>2^(1.8/17): 7.6 % a degree, by the other rule in print.</summary>
    private const double DoublingIn17Fahrenheit = 1.0761584;

    /// <summary>The model with the parameters described beside each of them.</summary>
    public static YeastGasModel Default { get; } =
        new(
            new(12, 16, 20),
            Temperature.FromCelsius(30),
            new(DoublingIn17Fahrenheit, 1.10, 1.10),
            Temperature.FromCelsius(36),
            Temperature.FromCelsius(40),
            Temperature.FromCelsius(57.5),
            15,
            5,
            0.04
        );

    /// <summary>
    /// The rate at a temperature over that at the reference. The band is that of the growth per degree, so it closes at the reference.
    /// </summary>
    public Band<double> RelativeRate(Temperature temperature)
    {
        var slow = RelativeRate(temperature.Celsius, GrowthPerDegree.Low);
        var typical = RelativeRate(temperature.Celsius, GrowthPerDegree.Typical);
        var fast = RelativeRate(temperature.Celsius, GrowthPerDegree.High);
        return new(Math.Min(slow, Math.Min(typical, fast)), typical, Math.Max(slow, Math.Max(typical, fast)));
    }

    /// <summary>Moles of carbon dioxide a minute, with sugar to spare and the lag over.</summary>
    /// <param name="yeastSolids">Dry matter of the yeast.</param>
    /// <param name="temperature">Of the dough.</param>
    /// <param name="sugarPercent">Sugar in baker's per cent.</param>
    public Band<double> MolesPerMinute(Mass yeastSolids, Temperature temperature, double sugarPercent)
    {
        var sweetness = Math.Clamp(1 - SlowdownPerPercent * (sugarPercent - SweetPercent), LeastActivity, 1);
        return MillimolesPerHour.With(RelativeRate(temperature), (rate, relative) =>
            rate * relative * sweetness * yeastSolids.Grams / 60 / 1000
        );
    }

    private double RelativeRate(double celsius, double growth)
    {
        var peak = Math.Pow(growth, Optimum.Celsius - Reference.Celsius);
        return celsius switch
        {
            < 0 => 0,
            _ when celsius <= Optimum.Celsius => Math.Pow(growth, celsius - Reference.Celsius),
            _ when celsius <= Decline.Celsius => peak,
            _ when celsius < Death.Celsius => peak * (Death.Celsius - celsius) / (Death.Celsius - Decline.Celsius),
            _ => 0,
        };
    }
}
