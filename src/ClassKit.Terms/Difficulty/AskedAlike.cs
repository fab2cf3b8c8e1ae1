namespace ClassKit.Terms.Difficulty;

/// <summary>All works that were asked the same parts of a scale: how many got how many of them.</summary>
/// <param name="Parts">The places of the parts on the scale, at least one.</param>
/// <param name="Scores">How many works got none, one, two … all of them.</param>
internal sealed record AskedAlike(int[] Parts, int[] Scores)
{
    /// <summary>
    /// More parts of one work than this are taken in pieces: each piece bears the model's condition by itself, and products stay numbers.
    /// </summary>
    private const int Most = 60;

    /// <summary>Puts works together by what they were asked.</summary>
    /// <param name="works">Of each, the places of the parts and whether they were got.</param>
    public static IReadOnlyList<AskedAlike> Of(IEnumerable<IReadOnlyList<(int Part, bool Got)>> works) =>
        [
            .. works
                .SelectMany(work => work.OrderBy(answer => answer.Part).Chunk(Most))
                .GroupBy(piece => string.Join(' ', piece.Select(answer => answer.Part)))
                .Select(alike =>
                {
                    var parts = alike.First().Select(answer => answer.Part).ToArray();
                    var scores = new int[parts.Length + 1];
                    foreach (var piece in alike)
                        scores[piece.Count(answer => answer.Got)]++;
                    return new AskedAlike(parts, scores);
                }),
        ];
}
