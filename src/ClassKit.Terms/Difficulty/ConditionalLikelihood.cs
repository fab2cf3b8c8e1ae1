namespace ClassKit.Terms.Difficulty;

/// <summary>
/// The likelihood of who got what, given how many each got, at some difficulties: nothing of anybody's ability is left in it.
/// </summary>
/// <remarks>
/// E. B. Andersen, The numerical solution of a set of conditional estimation equations, Journal of the Royal Statistical Society B 34
/// (1972), 42.
/// </remarks>
internal sealed class ConditionalLikelihood
{
    private readonly double[] _difficulties;

    /// <summary>Works it out.</summary>
    /// <param name="groups">All works.</param>
    /// <param name="got">How often each part was got.</param>
    /// <param name="difficulties">Of each part.</param>
    public ConditionalLikelihood(IReadOnlyList<AskedAlike> groups, IReadOnlyList<int> got, double[] difficulties)
    {
        _difficulties = difficulties;
        Slope = [.. got.Select(times => -(double)times)];
        Information = new double[difficulties.Length, difficulties.Length];
        Log = -got.Zip(difficulties, (times, difficulty) => times * difficulty).Sum();
        foreach (var group in groups)
            Add(group);
    }

    /// <summary>Its natural logarithm.</summary>
    public double Log { get; private set; }

    /// <summary>Its first derivatives.</summary>
    public double[] Slope { get; }

    /// <summary>Its second derivatives, with their sign turned round.</summary>
    public double[,] Information { get; }

    private void Add(AskedAlike group)
    {
        var mean = group.Parts.Average(part => _difficulties[part]);
        double[] ease = [.. group.Parts.Select(part => Math.Exp(mean - _difficulties[part]))];
        var all = SymmetricFunctions.Of(ease);
        var scores = Enumerable.Range(1, ease.Length).Where(score => group.Scores[score] > 0).ToList();
        foreach (var score in scores)
            Log -= group.Scores[score] * (Math.Log(all[score]) - (score * mean));

        var chances = new double[ease.Length][];
        for (var at = 0; at < ease.Length; at++)
        {
            var others = SymmetricFunctions.Of(ease, at);
            chances[at] = [.. scores.Select(score => ease[at] * others[score - 1] / all[score])];
            Slope[group.Parts[at]] += scores.Zip(chances[at], (score, chance) => group.Scores[score] * chance).Sum();
        }
        for (var one = 0; one < ease.Length; one++)
        {
            for (var other = one; other < ease.Length; other++)
            {
                var together = one == other ? null : SymmetricFunctions.Of(ease, one, other);
                var sum = 0.0;
                foreach (var (at, score) in scores.Index())
                {
                    var both =
                        together is null ? chances[one][at]
                        : score < 2 ? 0
                        : ease[one] * ease[other] * together[score - 2] / all[score];
                    sum += group.Scores[score] * (both - (chances[one][at] * chances[other][at]));
                }
                Information[group.Parts[one], group.Parts[other]] += sum;
                if (one != other)
                    Information[group.Parts[other], group.Parts[one]] += sum;
            }
        }
    }
}
