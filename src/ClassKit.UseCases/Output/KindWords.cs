using System.Text.Json;

namespace ClassKit.UseCases.Output;

/// <summary>
/// The words that our JSON files use for kinds of things: <c>towards-zero</c> for <c>TowardsZero</c>. A test holds them, for they are
/// stable over versions.
/// </summary>
internal static class KindWords
{
    public static string Of<T>(T kind)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(kind.ToString());

    /// <summary>The kind that a word stands for.</summary>
    /// <exception cref="FormatException">The word stands for none.</exception>
    public static T Find<T>(string word)
        where T : struct, Enum
    {
        foreach (var kind in Enum.GetValues<T>())
        {
            if (Of(kind) == word)
                return kind;
        }
        throw new FormatException($"“{word}” is nothing that can stand here; expected {string.Join(", ", Enum.GetValues<T>().Select(Of))}");
    }
}
