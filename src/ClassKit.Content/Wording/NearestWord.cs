namespace ClassKit.Content.Wording;

/// <summary>The known word that a mistyped one was most likely meant to be.</summary>
public static class NearestWord
{
    /// <summary>No word is so long that a longer one helps; keeps the comparison cheap on any input.</summary>
    private const int MaxLength = 60;

    /// <summary>The nearest of <paramref name="known"/>, the first among equals; null if none is near.</summary>
    public static string? To(string typed, IEnumerable<string> known) => AllTo(typed, known, 1) is [var nearest] ? nearest : null;

    /// <summary>The nearest few of <paramref name="known"/>, nearest first; fewer if fewer are near.</summary>
    public static IReadOnlyList<string> AllTo(string typed, IEnumerable<string> known, int most)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (typed.Length is 0 or > MaxLength)
            return [];
        var lower = typed.ToLowerInvariant();
        return
        [
            .. known
                .Where(word => word.Length <= MaxLength)
                .Select(word => (Word: word, Distance: EditDistance.Between(lower, word.ToLowerInvariant())))
                .Where(candidate => candidate.Distance <= Math.Max(1, (Math.Min(lower.Length, candidate.Word.Length) + 1) / 3))
                .OrderBy(candidate => candidate.Distance)
                .Select(candidate => candidate.Word)
                .Take(most),
        ];
    }

    /// <summary>A sentence that offers the nearest word, or lists the known ones when none is near.</summary>
    public static string Advice(string typed, IReadOnlyCollection<string> known) =>
        To(typed, known) is { } nearest ? $"Did you mean `{nearest}`?"
        : known is not { Count: > 0 } ? "There is none here."
        : $"Known here: {string.Join(", ", known)}.";
}
