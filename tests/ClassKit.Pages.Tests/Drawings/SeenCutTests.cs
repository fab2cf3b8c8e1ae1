using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Randomness;
using ClassKit.Pages.Drawings;

namespace ClassKit.Pages.Tests.Drawings;

/// <summary>
/// A drawing shows what tells its state from the others, for every student: the signs are those of common practice, no source.
/// </summary>
public sealed class SeenCutTests
{
    private static IEnumerable<SeenCut> Cuts(string state) =>
        Enumerable.Range(1, 200).Select(seed => SeenCut.Of(state, new SeededDraws((ulong)seed)));

    private static double Area(SeenCut cut) => cut.Bubbles.Sum(bubble => Math.PI * bubble.Wide * bubble.Tall);

    /// <summary>The top of the outline at the left, in the middle and at the right, in millimetres from the drawing's top.</summary>
    private static (double Left, double Middle, double Right) Top(SeenCut cut)
    {
        var points = cut
            .Outline.TrimStart('M')
            .TrimEnd('Z')
            .Split('L')
            .Select(point =>
                point.Split(' ').Select(number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture)).ToArray()
            )
            .ToList();
        return (points[0][1], points[20][1], points[40][1]);
    }

    public static TheoryData<string> States => [.. DrawnThings.All.SelectMany(DrawnThings.States)];

    [Theory]
    [MemberData(nameof(States))]
    public void Bubbles_lie_within_the_cut_and_no_two_students_have_the_same(string state)
    {
        var cuts = Cuts(state).ToList();
        foreach (var cut in cuts)
        {
            var highest = Math.Min(Top(cut).Middle, Top(cut).Left);
            Assert.DoesNotContain(cut.Bubbles, bubble => bubble.Y + bubble.Tall < highest || bubble.Y + bubble.Tall > SeenCut.Floor);
        }

        Assert.Distinct(cuts.Select(cut => string.Join(' ', cut.Bubbles)));
    }

    [Fact]
    public void Dough_rises_domes_and_sinks_and_its_gas_grows()
    {
        foreach (var ((young, ready), old) in Cuts("under_proofed").Zip(Cuts("just_proofed")).Zip(Cuts("over_proofed")))
        {
            Assert.True(Top(young).Middle > (SeenCut.Height / 2) && Top(ready).Middle < 20, "how far the tub is filled");
            Assert.True(Top(ready).Middle < Top(ready).Left && Top(old).Middle > Top(old).Left, "domed, and sunk");
            Assert.True(Area(young) * 3 < Area(ready), $"{Area(young)} and {Area(ready)} mm² of gas");
            Assert.True(old.Bubbles.Max(bubble => bubble.Wide) > 2 * ready.Bubbles.Max(bubble => bubble.Wide), "how large the largest are");
            Assert.True(Touching(old) && !Touching(ready), "walls that have gone");
        }
    }

    [Fact]
    public void Only_stirred_muffins_have_tunnels_to_a_peak_and_only_stood_ones_are_flat_and_close()
    {
        foreach (var ((well, stirred), stood) in Cuts("well_mixed").Zip(Cuts("overmixed")).Zip(Cuts("stood_long")))
        {
            Assert.True(stirred.Bubbles.Count(bubble => bubble.Tall > 4 * bubble.Wide) >= 3, "tunnels");
            Assert.DoesNotContain(well.Bubbles.Concat(stood.Bubbles), bubble => bubble.Tall > 1.5 * bubble.Wide);
            Assert.True(Top(stirred).Middle < Top(well).Middle && Top(well).Middle < Top(stood).Middle, "how high the middle is");
            Assert.True(Area(stood) * 3 < Area(well), $"{Area(stood)} and {Area(well)} mm² of gas");
        }
    }

    private static bool Touching(SeenCut cut) =>
        cut
            .Bubbles.Index()
            .Any(one =>
                cut.Bubbles.Skip(one.Index + 1)
                    .Any(other =>
                        Math.Sqrt(Math.Pow(one.Item.X - other.X, 2) + Math.Pow(one.Item.Y - other.Y, 2)) < one.Item.Wide + other.Wide
                    )
            );
}
