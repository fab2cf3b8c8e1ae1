namespace ClassKit.Terms.Difficulty;

/// <summary>
/// The correlation of getting a part with the share earned of everything else, pooled within deals, so that a better class or an easier set
/// is no part of it.
/// </summary>
internal static class WithinDeals
{
    /// <summary>Null where one of the two does not vary.</summary>
    /// <param name="works">Those that were asked the part.</param>
    /// <param name="part">The part.</param>
    public static double? Correlation(IEnumerable<PastWork> works, AskedPart part)
    {
        var (together, got, earned) = (0.0, 0.0, 0.0);
        foreach (var deal in works.Where(work => work.Answers.Count > 1).GroupBy(work => (work.Class, work.Deal)))
        {
            var pairs = deal.Select(work => Pair(work, part)).ToList();
            var (x, y) = (pairs.Average(pair => pair.Got), pairs.Average(pair => pair.Others));
            together += pairs.Sum(pair => (pair.Got - x) * (pair.Others - y));
            got += pairs.Sum(pair => Math.Pow(pair.Got - x, 2));
            earned += pairs.Sum(pair => Math.Pow(pair.Others - y, 2));
        }
        return got * earned > 0 ? together / Math.Sqrt(got * earned) : null;
    }

    private static (double Got, double Others) Pair(PastWork work, AskedPart part)
    {
        var others = work.Answers.Where(answer => answer.Part != part).ToList();
        return (
            work.Answers.First(answer => answer.Part == part).IsGot ? 1 : 0,
            (double)(others.Sum(answer => answer.Points) / others.Sum(answer => answer.OutOf))
        );
    }
}
