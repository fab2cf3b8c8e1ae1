using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Ovens;

namespace ClassKit.BenchPlans.Tests.Ovens;

public sealed class OvenCourseTests
{
    private static readonly Maker Team = Maker.OfTeam(1);

    /// <summary>
    /// Popovers at 220 °C from minute 86, turned down to 175 °C at minute 106, out at 120; buns at 190 °C from minute 125. By hand.
    /// </summary>
    [Fact]
    public void An_oven_that_is_turned_down_says_so_from_that_minute_on()
    {
        var popovers = new BenchBread(
            "popovers",
            "Popovers",
            [Bakery.Baked("Bake hot", 20, 20, 220, shut: true), Bakery.Baked("Dry", 14, 14, 175, shut: true)]
        );
        var buns = new BenchBread("buns", "Buns", [Bakery.Baked("Bake", 18, 18, 190)]);
        var bench = new BenchClass(new(150, 0, 0, 0), 1, 1, [], Bakery.Ovens(2, 1, heatUp: 20), [popovers, buns], []);
        var course = Assert.Single(
            OvenCourse.Of(
                new(
                    bench,
                    [new([Team])],
                    [new(new(Team, 0), 0, 86, 106, 1), new(new(Team, 0), 1, 106, 120, 1), new(new(Team, 1), 0, 125, 143, 1)],
                    []
                )
            )
        );

        Assert.Equal(
            [(66, 86, 220, true), (86, 106, 220, false), (106, 120, 175, false), (120, 125, 190, true), (125, 143, 190, false)],
            course.Spans.Select(span =>
                (span.From, span.To, (int)Math.Round(span.Dial.Celsius, MidpointRounding.AwayFromZero), span.IsEmpty)
            )
        );
        Assert.Null(course.DialAt(65));
        Assert.Equal(175, course.DialAt(106)!.Value.Celsius, 1e-9);
    }

    /// <summary>At 5 °C a minute, 45 °C take nine minutes. By hand.</summary>
    [Theory]
    [InlineData(0, 220)]
    [InlineData(4, 200)]
    [InlineData(8, 180)]
    [InlineData(9, 175)]
    [InlineData(13, 175)]
    public void An_oven_follows_its_dial_no_faster_than_it_cools(int minutes, double celsius)
    {
        var ovens = Bakery.Ovens(1, 1);
        Assert.Equal(
            celsius,
            ovens
                .HeatAfter([
                    (Baking.Quantities.Temperature.FromCelsius(220), 20),
                    (Baking.Quantities.Temperature.FromCelsius(175), minutes),
                ])
                .Celsius,
            1e-9
        );
    }
}
