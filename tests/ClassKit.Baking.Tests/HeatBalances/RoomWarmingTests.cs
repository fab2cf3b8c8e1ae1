using ClassKit.Baking.Formulas;
using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.HeatBalances;

/// <summary>A bowl of batter in a room. Newton's law of cooling; the coefficient by radiation and free convection.</summary>
public sealed class RoomWarmingTests
{
    /// <summary>
    /// Stefan and Boltzmann, 5.670e-8 W/(m² K⁴), ε = 0.95 for what is wet or painted; air along an upright wall 1.42 (ΔT / L)^¼ (J. P.
    /// Holman, Heat Transfer, table 7-2, from memory).
    /// </summary>
    [Theory]
    [InlineData(12, 21, 0.08)]
    [InlineData(5, 24, 0.12)]
    [InlineData(18, 22, 0.10)]
    public void Radiation_and_still_air_together_lie_within_the_band(double dough, double room, double high)
    {
        var mean = (dough + room) / 2 + 273.15;
        var radiation = 4 * 0.95 * 5.670e-8 * Math.Pow(mean, 3);
        var air = 1.42 * Math.Pow((room - dough) / high, 0.25);

        Assert.InRange(radiation + air, RoomWarming.SurfaceCoefficient.Low, RoomWarming.SurfaceCoefficient.High);
        Assert.Equal(RoomWarming.SurfaceCoefficient.Typical, radiation + air, 1.5);
    }

    /// <summary>
    /// Half a litre of water as half a ball: r = 62.0 mm, 3 π r² = 0.0363 m², 0.499 kg × 4.1766 kJ/(kg K) over 10 W/(m² K) × that: 95.7 min
    /// by hand.
    /// </summary>
    [Fact]
    public void Half_a_litre_of_water_takes_an_hour_and_a_half_for_most_of_the_way() =>
        Assert.Equal(95.7, Bowl(Doughs.Of("water", Leavening.Yeast, ("water", 100)), 499, 10, 20).ConstantMinutes, 0.5);

    /// <summary>The heat balance in small steps: dT/dt = (room - T) / constant, by Runge's midpoint rule and not by its solution.</summary>
    [Theory]
    [InlineData(12, 21)]
    [InlineData(27, 22)]
    public void Small_steps_of_the_balance_come_to_the_same(double dough, double room)
    {
        var warming = Bowl(Muffins, 375, dough, room);
        var (now, sum) = (dough, 0.0);
        const double Step = 0.01;
        for (var minute = 0.0; minute < 40 - Step / 2; minute += Step)
        {
            var half = now + (room - now) / warming.ConstantMinutes * Step / 2;
            sum += half * Step;
            now += (room - half) / warming.ConstantMinutes * Step;
        }

        Assert.Equal(now, warming.After(40).Celsius, 1e-3);
        Assert.Equal(sum / 40, warming.Mean(40).Celsius, 1e-3);
    }

    /// <summary>
    /// A batter with cold egg and milk needs an hour and more in the bowl to feel like the room, a piece of it less. Common practice, no
    /// source.
    /// </summary>
    [Fact]
    public void A_bowl_of_batter_needs_more_than_an_hour_and_a_piece_less()
    {
        Assert.InRange(Bowl(Muffins, 375, 12, 21).ConstantMinutes, 40, 120);
        Assert.True(Bowl(Muffins, 60, 12, 21).ConstantMinutes < Bowl(Muffins, 375, 12, 21).ConstantMinutes * 0.6);
    }

    [Fact]
    public void It_never_goes_past_the_room_and_its_band_is_in_order()
    {
        foreach (var (dough, room) in new[] { (12.0, 21.0), (27, 20), (22, 22) })
        foreach (var minutes in new[] { 0.0, 1, 20, 40, 600 })
        {
            var warming = Bowl(Muffins, 375, dough, room);
            var band = warming.Between(minutes);

            Assert.InRange(warming.After(minutes).Celsius, Math.Min(dough, room), Math.Max(dough, room));
            Assert.True(band.Low.Celsius <= band.Typical.Celsius && band.Typical.Celsius <= band.High.Celsius);
        }
        Assert.Equal(12, Bowl(Muffins, 375, 12, 21).Mean(0).Celsius);
    }

    private static BakersFormula Muffins =>
        Doughs.Of(
            "muffins",
            Leavening.Chemical,
            ("ap_flour", 100),
            ("buttermilk", 95),
            ("whole_egg", 20),
            ("unsalted_butter", 22),
            ("sugar", 18),
            ("baking_powder", 2.5)
        );

    private static RoomWarming Bowl(BakersFormula formula, double grams, double dough, double room) =>
        RoomWarming.Of(formula, Mass.FromGrams(grams), Temperature.FromCelsius(dough), Temperature.FromCelsius(room));
}
