using ClassKit.Lessons.Authored;
using ClassKit.Pages.Drawings;

namespace ClassKit.Pages.Tests.Drawings;

/// <summary>
/// What is drawn holds what was computed: the outline turned around its middle, or drawn along its tin, is the volume again.
/// </summary>
/// <remarks>
/// Solids of revolution by discs, V = π ∫ x² dz, and prisms, V = l ∫ 2 x dz (Weisstein, MathWorld, "Method of Disks"), summed over the
/// drawn lines.
/// </remarks>
public sealed class BreadOutlineTests
{
    public static TheoryData<double, double, double> Cups =>
        new()
        {
            { 70, 50, 45 },
            { 60, 60, 30 },
            { 85, 60, 60 },
        };

    [Theory]
    [MemberData(nameof(Cups))]
    public void A_cup_holds_its_volume_below_the_rim_above_it_and_ballooning(double top, double bottom, double depth)
    {
        var cup = new BakingCup(top, bottom, depth);
        foreach (var millilitres in new[] { cup.Millilitres * 0.4, cup.Millilitres * 1.05, cup.Millilitres * 1.6, cup.Millilitres * 3 })
        {
            var outline = BreadOutline.Of(cup, millilitres);
            AssertClose(millilitres, Turned(outline));
            AssertClose(cup.HeightOf(millilitres), outline.Height);
            AssertClose(cup.DiameterOf(millilitres), outline.HalfWidth * 2);
        }
    }

    [Fact]
    public void What_stands_free_holds_its_volume()
    {
        var outline = BreadOutline.Of(FreeStanding.Round, 300);
        AssertClose(300, Turned(outline));
        AssertClose(FreeStanding.Round.HeightOf(300), outline.Height);
    }

    [Fact]
    public void A_tin_holds_its_volume()
    {
        var tin = new LoafTin(200, 100, 70);
        foreach (var millilitres in new[] { 900.0, 1500, 1800, 3000 })
        {
            var outline = BreadOutline.Of(tin, millilitres);
            AssertClose(millilitres, Pairs(outline).Sum(pair => (pair.From.X + pair.To.X) * (pair.To.Z - pair.From.Z)) * 200 / 1000);
            AssertClose(tin.HeightOf(millilitres), outline.Height);
        }
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.75)]
    public void A_hollow_holds_its_share(double share)
    {
        var outline = BreadOutline.Of(new BakingCup(85, 60, 60), 500);
        AssertClose(500 * share, Turned(outline.Inside(share)));
        Assert.True(outline.Inside(share).Edge.All(point => point.Z > 0 && point.Z < outline.Height));
    }

    private static double Turned(BreadOutline outline) =>
        Math.PI
        * Pairs(outline)
            .Sum(pair => (pair.From.X * pair.From.X + pair.From.X * pair.To.X + pair.To.X * pair.To.X) / 3 * (pair.To.Z - pair.From.Z))
        / 1000;

    private static IEnumerable<((double X, double Z) From, (double X, double Z) To)> Pairs(BreadOutline outline) =>
        outline.Edge.Zip(outline.Edge.Skip(1));

    private static void AssertClose(double expected, double found) => Assert.InRange(found, expected * 0.997, expected * 1.003);
}
