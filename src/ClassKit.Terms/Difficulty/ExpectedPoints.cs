namespace ClassKit.Terms.Difficulty;

/// <summary>Puts together what a class earns with a set, part by part, and how unsure it is.</summary>
internal sealed class ExpectedPoints
{
    /// <summary>The last tenth of the normal distribution begins so many standard deviations above its middle.</summary>
    private const double Tenth = 1.2815515655446004;

    private readonly Dictionary<int, List<(PartDifficulty Part, double Points)>> _byScale = [];
    private readonly double _got,
        _missed;
    private double _mean,
        _variance,
        _ofOne;

    /// <summary>Nothing is asked yet.</summary>
    /// <param name="got">The mean share of its points that an answer which counts as got earned.</param>
    /// <param name="missed">And of one that does not.</param>
    public ExpectedPoints(double got, double missed) => (_got, _missed) = (got, missed);

    /// <summary>
    /// Adds a part that has no difficulty: every share of people who get it is as likely as any other before the answers (Bayes, Laplace).
    /// </summary>
    public void Add(PartDifficulty part, double points)
    {
        if (part.Scale is { } scale)
        {
            if (!_byScale.TryGetValue(scale, out var others))
                _byScale[scale] = others = [];
            others.Add((part, points));
            return;
        }
        var chance = (part.Got + 1.0) / (part.Answers + 2);
        var worth = points * (_got - _missed);
        _mean += (points * _missed) + (worth * chance);
        _variance += worth * worth * chance * (1 - chance) / (part.Answers + 3);
        _ofOne += worth * worth * chance * (1 - chance);
    }

    /// <summary>The band for so many students.</summary>
    /// <param name="students">At least one.</param>
    /// <param name="ability">Who they are on each scale.</param>
    public (double Low, double Middle, double High) Band(int students, Func<int, AbilitySpread> ability)
    {
        foreach (var (scale, parts) in _byScale)
            Add(parts, ability(scale));
        var half = Tenth * Math.Sqrt(_variance + (_ofOne / students));
        return (_mean - half, _mean, _mean + half);
    }

    private void Add(List<(PartDifficulty Part, double Points)> parts, AbilitySpread ability)
    {
        var (sum, squares, chanceOnly, slope) = (0.0, 0.0, 0.0, 0.0);
        var slopes = new double[parts.Count];
        foreach (var (at, weight) in NormalGrid.Points)
        {
            var earned = 0.0;
            foreach (var (place, (part, points)) in parts.Index())
            {
                var worth = points * (_got - _missed);
                var chance = 1 / (1 + Math.Exp(part.Difficulty!.Value - ability.Mean - (ability.Deviation * at)));
                var bend = worth * chance * (1 - chance);
                earned += (points * _missed) + (worth * chance);
                chanceOnly += weight * worth * bend;
                slope += weight * bend;
                slopes[place] += weight * bend;
            }
            sum += weight * earned;
            squares += weight * earned * earned;
        }
        _mean += sum;
        _ofOne += chanceOnly + Math.Max(0, squares - (sum * sum));
        _variance += Math.Pow(slope * ability.Error, 2) + parts.Zip(slopes, (part, own) => Math.Pow(own * part.Part.Error!.Value, 2)).Sum();
    }
}
