namespace ClassKit.Records.Storage;

/// <summary>
/// The words for kinds of things in columns: the names of their members, which a test holds, for they are stable over versions.
/// </summary>
internal static class Words
{
    public static string Of<T>(T kind)
        where T : struct, Enum => kind.ToString();

    /// <exception cref="FormatException">The word stands for none.</exception>
    public static T Find<T>(string word)
        where T : struct, Enum =>
        Enum.TryParse<T>(word, out var kind) && Of(kind) == word ? kind : throw new FormatException($"{word} is no {typeof(T).Name}");
}
