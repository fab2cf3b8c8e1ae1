namespace ClassKit.Content.Wording;

/// <summary>
/// The known name of several words that a mistyped one was most likely meant to be: word for word, since rye flour is not cake flour,
/// however few letters lie between.
/// </summary>
internal static class NearestName
{
    /// <summary>The nearest of <paramref name="known"/>, a few if several are as near; none if none is near.</summary>
    public static IReadOnlyList<string> AllTo(string typed, IEnumerable<string> known, int most)
    {
        var words = Words(typed);
        if (words.Count is 0 or > 8)
            return [];
        IReadOnlyList<string> names = [.. known.Distinct()];
        var near = names.Select(name => (Name: name, Slips: Slips(words, Words(name)))).Where(name => name.Slips is not null).ToList();
        // A name of several words that all were typed, with others between them: instant dry yeast, of instant yeast.
        if (near.Count == 0)
            return [.. names.Where(name => Words(name) is { Count: > 1 } all && all.TrueForAll(words.Contains)).Take(most)];
        var fewest = near.Min(name => name.Slips);
        return [.. near.Where(name => name.Slips == fewest).Select(name => name.Name).Take(most)];
    }

    /// <summary>
    /// How far a name is off; null if some word that was typed is none of its words. Words that were not typed count little.
    /// </summary>
    private static int? Slips(List<string> typed, List<string> known)
    {
        var sum = 0;
        foreach (var word in typed)
        {
            var nearest = known.Select(other => EditDistance.Between(word, other)).DefaultIfEmpty(int.MaxValue).Min();
            if (nearest > Forgiven(word))
                return null;
            sum += nearest;
        }
        return sum * 10 + Math.Max(0, known.Count - typed.Count);
    }

    /// <summary>A short word has no letter to spare but one, and a single letter none.</summary>
    private static int Forgiven(string word) =>
        word.Length switch
        {
            1 => 0,
            <= 5 => 1,
            _ => 2,
        };

    /// <summary>The words of a name, in small letters.</summary>
    public static List<string> Words(string name) =>
        [.. name.ToLowerInvariant().Split([' ', ',', '(', ')', '-', '_', '%'], StringSplitOptions.RemoveEmptyEntries)];
}
