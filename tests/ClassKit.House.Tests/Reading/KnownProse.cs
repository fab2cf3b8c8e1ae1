using System.Globalization;

namespace ClassKit.House.Tests.Reading;

/// <summary>Why text stands in a folder of a pure room.</summary>
/// <param name="Pieces">How many there are, no more and no less; null for content, which grows with what is taught.</param>
/// <param name="Why">The reason.</param>
internal sealed record KnownProse(int? Pieces, string Why)
{
    /// <summary>
    /// Reads lines such as <c>ClassKit.Baking/Steam content: what steam does, beside its sources</c> and <c>ClassKit.Exercises/Dealing 2:
    /// …</c>.
    /// </summary>
    public static Dictionary<string, KnownProse> In(IEnumerable<string> lines) =>
        lines
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split([' ', ':'], 3))
            .ToDictionary(
                words => words[0],
                words => new KnownProse(words[1] == "content" ? null : int.Parse(words[1], CultureInfo.InvariantCulture), words[2].Trim()),
                StringComparer.Ordinal
            );

    /// <summary>True if so many pieces may stand there.</summary>
    public bool Allows(int pieces) => Pieces is null || pieces <= Pieces;
}
