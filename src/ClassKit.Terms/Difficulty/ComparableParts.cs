namespace ClassKit.Terms.Difficulty;

/// <summary>
/// Which parts can be put on one scale: those of which each was got by somebody who missed another, and missed by somebody who got another,
/// in a chain that leads back.
/// </summary>
/// <remarks>
/// Elsewhere the likelihood has no greatest value: a part that everybody got is easier than any number says. G. H. Fischer, Psychometrika
/// 46 (1981), 59.
/// </remarks>
internal static class ComparableParts
{
    /// <summary>The scales, each the places of two or more parts, the largest first.</summary>
    /// <param name="works">Of each, the places of the parts and whether they were got.</param>
    /// <param name="parts">How many parts there are.</param>
    public static IReadOnlyList<IReadOnlyList<int>> Of(IEnumerable<IReadOnlyList<(int Part, bool Got)>> works, int parts)
    {
        var (onward, back) = (New(parts), New(parts));
        foreach (var work in works)
        {
            foreach (var (got, _) in work.Where(answer => answer.Got))
            {
                foreach (var (missed, _) in work.Where(answer => !answer.Got))
                {
                    onward[got].Add(missed);
                    back[missed].Add(got);
                }
            }
        }
        var scales = new List<IReadOnlyList<int>>();
        var left = Enumerable.Range(0, parts).ToHashSet();
        for (var part = 0; part < parts; part++)
        {
            if (!left.Contains(part))
                continue;
            var scale = Reached(part, onward);
            scale.IntersectWith(Reached(part, back));
            left.ExceptWith(scale);
            if (scale.Count > 1)
                scales.Add([.. scale.Order()]);
        }
        return [.. scales.OrderByDescending(scale => scale.Count)];
    }

    private static HashSet<int>[] New(int parts) => [.. Enumerable.Range(0, parts).Select(_ => new HashSet<int>())];

    private static HashSet<int> Reached(int from, HashSet<int>[] ways)
    {
        HashSet<int> reached = [from];
        var open = new Stack<int>([from]);
        while (open.TryPop(out var at))
        {
            foreach (var next in ways[at].Where(reached.Add))
                open.Push(next);
        }
        return reached;
    }
}
