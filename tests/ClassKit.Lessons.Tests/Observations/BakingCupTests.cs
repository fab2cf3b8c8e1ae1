using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Tests.Observations;

public sealed class BakingCupTests
{
    private static readonly BakingCup Cup = new(70, 51, 35);

    /// <summary>A straight cup is a cylinder: 40 mm wide and 50 mm deep holds π × 20² × 50 mm³ = 62.83 mL. By hand.</summary>
    [Fact]
    public void A_straight_cup_holds_a_cylinder() => Assert.Equal(62.8319, new BakingCup(40, 40, 50).Millilitres, 4);

    /// <summary>
    /// Weisstein, MathWorld, "Conical Frustum": V = π h (R² + R r + r²) / 3 = π × 35 × (35² + 35 × 25.5 + 25.5²) / 3 = 101.44 mL. By hand.
    /// </summary>
    [Fact]
    public void A_tapered_cup_holds_a_frustum() => Assert.Equal(101.44, Cup.Millilitres, 0.01);

    /// <summary>
    /// Of a cone's tip filled to half its height there is an eighth of it (Euclid, XII.12); a cup that nearly ends in a point.
    /// </summary>
    [Fact]
    public void Half_the_height_of_a_cone_is_an_eighth_of_its_volume()
    {
        var cone = new BakingCup(60, 1e-9, 90);
        Assert.Equal(45, cone.HeightOf(cone.Millilitres / 8), 1e-6);
        Assert.Equal(30, cone.DiameterOf(cone.Millilitres / 8), 1e-6);
    }

    /// <summary>A dome as high as half its width is a hemisphere: 2/3 π r³ (Archimedes), for r = 35 mm 89.80 mL.</summary>
    [Fact]
    public void A_hemisphere_on_the_rim_stands_half_the_rim_higher()
    {
        var volume = Cup.Millilitres + 2.0 / 3 * Math.PI * 35 * 35 * 35 / 1000;
        Assert.Equal(35 + 35, Cup.HeightOf(volume), 1e-6);
        Assert.Equal(70, Cup.DiameterOf(volume), 1e-6);
    }

    /// <summary>Nearly a whole sphere on a narrow rim: of 100 mL, 4/3 π r³ gives 57.59 mm across.</summary>
    [Fact]
    public void What_balloons_over_a_narrow_rim_is_as_wide_as_its_sphere()
    {
        var straw = new BakingCup(1, 1, 10);
        Assert.Equal(57.59, straw.DiameterOf(100 + straw.Millilitres), 0.01);
        Assert.Equal(10 + 57.59, straw.HeightOf(100 + straw.Millilitres), 0.02);
    }

    [Fact]
    public void More_stands_higher_and_is_never_narrower()
    {
        var volumes = Enumerable.Range(1, 200).Select(step => step * 2.0).ToList();
        Assert.All(volumes.Zip(volumes.Skip(1)), pair =>
        {
            Assert.True(Cup.HeightOf(pair.First) < Cup.HeightOf(pair.Second));
            Assert.True(Cup.DiameterOf(pair.First) <= Cup.DiameterOf(pair.Second) + 1e-9);
        });
        Assert.Equal(35, Cup.HeightOf(Cup.Millilitres), 1e-6);
    }
}
