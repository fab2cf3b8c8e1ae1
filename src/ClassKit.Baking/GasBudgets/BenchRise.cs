using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>How far a fermented dough is forecast to rise in a stage on the bench: what a card asks for when it says "doubled".</summary>
/// <param name="Stage">The stage's name.</param>
/// <param name="Times">Its volume as the stage ends over that as it began, its gas with it; by the typical time, so that the band is that of the
/// yeast's rate and of what the dough holds.</param>
public sealed record BenchRise(string Stage, Band<double> Times)
{
    internal static IReadOnlyList<BenchRise> Of(Volume gasFree, IReadOnlyList<GasPoint> course)
    {
        List<BenchRise> rises = [];
        for (var begin = 0; begin < course.Count; )
        {
            var end = begin;
            while (end + 1 < course.Count && course[end + 1].Stage == course[begin].Stage && !course[end + 1].InOven)
                end++;
            // The level is marked once the dough lies in its bowl: where a stage begins the one before has ended.
            if (!course[end].InOven)
                rises.Add(new(course[end].Stage, Times(course[Math.Max(0, begin - 1)].Held, course[end].Held)));
            begin = end + 1;
        }
        return rises;

        Band<double> Times(Band<Volume> before, Band<Volume> after)
        {
            // An end that is full already rises less than one that is not, so the three need not come in order.
            double[] ordered =
            [
                .. new[] { One(before.Low, after.Low), One(before.Typical, after.Typical), One(before.High, after.High) }.Order(),
            ];
            return new(ordered[0], ordered[1], ordered[2]);
        }

        double One(Volume before, Volume after) => (gasFree + after) / (gasFree + before);
    }
}
