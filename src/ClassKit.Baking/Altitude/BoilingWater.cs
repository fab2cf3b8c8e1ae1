using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.Altitude;

/// <summary>Where water boils in a kitchen.</summary>
public static class BoilingWater
{
    /// <summary>The boiling point at an altitude, on a day of average pressure.</summary>
    /// <param name="metres">Above sea level, -500 m to 11 000 m.</param>
    /// <remarks>
    /// US Standard Atmosphere 1976 and IAPWS-IF97. Check value: 203.0 °F at 5000 ft in extension tables, computed 202.8 °F.
    /// </remarks>
    public static Computed<Temperature> At(double metres)
    {
        var air = StandardAtmosphere.PressureAt(metres);
        return air.Then(pressure =>
        {
            var boiling = Saturation.BoilingPoint(pressure);
            return new Explanation(
                "Boiling point at an altitude",
                [
                    .. air.Explanation!.Steps,
                    ExplainedStep.Given(
                        "boiling point",
                        $"of water under {Figures.Hectopascals(pressure)}, IAPWS-IF97",
                        $"{Figures.Celsius(boiling)} ({Figures.Show(boiling.Fahrenheit)} °F)"
                    ),
                ],
                air.Explanation.Model
            ).For(boiling);
        });
    }
}
