using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Effort;
using ClassKit.Exercises.Randomness;

namespace ClassKit.Exercises.Guarantees;

/// <summary>A sample of an exercise's draws, the same whenever it is taken: what is usual, to measure variants against.</summary>
internal static class UsualDraws
{
    /// <summary>How far from the median effort a variant may be, as a share of it: a choice of ours, no source.</summary>
    private const double Spread = 0.3;

    /// <summary>A band is at least so wide to either side, so that a short exercise is not torn apart by a digit.</summary>
    private const int LeastSpread = 4;

    private const int Size = 200;
    private const int MostDraws = 2000;

    /// <summary>Draws that keep the rules.</summary>
    public static IReadOnlyList<Candidate> Of(KeyStructure structure, IReadOnlyList<VariantRule> rules)
    {
        var random = SeededDraws.For(0, "usual", structure.Exercise.Id);
        var sample = new List<Candidate>(Size);
        for (var draw = 0; draw < MostDraws && sample.Count < Size; draw++)
        {
            var candidate = new Candidate(structure, Candidate.DrawGivens(structure.Exercise, random));
            if (candidate.FirstBreach(rules) is null)
                sample.Add(candidate);
        }
        return sample;
    }

    /// <summary>The band of effort of an exercise that states none: around the median.</summary>
    public static EffortBand BandOf(IReadOnlyCollection<Candidate> sample)
    {
        if (sample.Count == 0)
            return new(0, int.MaxValue);
        var efforts = sample
            .Select(candidate => EffortMeasure.Of(candidate.Exercise, candidate.Givens, candidate.Answers))
            .Order()
            .ToList();
        var median = efforts[efforts.Count / 2];
        var spread = Math.Max(LeastSpread, (int)Math.Ceiling(median * Spread));
        return new(Math.Max(0, median - spread), median + spread);
    }
}
