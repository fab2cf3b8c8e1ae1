using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Tests.Observations;

public sealed class BakingShapeTests
{
    /// <summary>
    /// By hand: 100 mm × 50 mm × 40 mm are 200 mL; half of that stands 20 mm high; half a cylinder of 25 mm on the rim is π 25² / 2 × 100
    /// mm³ = 98.17 mL more.
    /// </summary>
    [Fact]
    public void A_loaf_fills_its_tin_and_then_vaults()
    {
        var tin = new LoafTin(100, 50, 40);
        Assert.Equal(200, tin.Millilitres, 1e-9);
        Assert.Equal(20, tin.HeightOf(100), 1e-9);
        Assert.Equal(65, tin.HeightOf(200 + 98.1748), 0.001);
        Assert.Equal(50, tin.DiameterOf(250));
    }

    /// <summary>Half a sphere of 60 mm is as high as half of its width, and holds 2/3 π 30³ = 56.55 mL.</summary>
    [Fact]
    public void A_round_that_is_half_as_high_as_wide_is_half_a_sphere()
    {
        var half = new FreeStanding(0.5, "", 0.1);
        Assert.Equal(30, half.HeightOf(56.5487), 0.001);
        Assert.Equal(60, half.DiameterOf(56.5487), 0.001);
    }

    public static TheoryData<FreeStanding, double, double> Ends =>
        new()
        {
            // S. Huang and D. Miskelly, Steamed Breads, table 2.1: 1.2 to 1.6 times as wide as high
            { FreeStanding.Steamed, 1 / 1.6, 1 / 1.2 },
            // From memory
            { FreeStanding.Round, 0.35, 0.6 },
        };

    /// <summary>What a shape says of itself is what its error covers, in height and in width.</summary>
    [Theory]
    [MemberData(nameof(Ends))]
    public void The_error_of_a_round_covers_the_ends_that_it_names(FreeStanding round, double flattest, double tallest)
    {
        foreach (var end in (FreeStanding[])[round with { HeightToWidth = flattest }, round with { HeightToWidth = tallest }])
        {
            Assert.InRange(end.HeightOf(200) / round.HeightOf(200), 1 - round.ShapeError, 1 + round.ShapeError);
            Assert.InRange(end.DiameterOf(200) / round.DiameterOf(200), 1 - round.ShapeError, 1 + round.ShapeError);
        }
    }
}
