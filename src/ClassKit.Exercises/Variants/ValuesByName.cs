using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace ClassKit.Exercises.Variants;

/// <summary>
/// Values under names that many share: a class's variants of an exercise differ in the values alone, and a dictionary for each takes ten
/// times their room.
/// </summary>
/// <remarks>There are a handful of names, so that looking through them is as quick as looking one up.</remarks>
internal sealed class ValuesByName<T>(string[] names, T[] values) : IReadOnlyDictionary<string, T>
{
    public int Count => names.Length;

    public IEnumerable<string> Keys => names;

    public IEnumerable<T> Values => values;

    public T this[string key] => TryGetValue(key, out var value) ? value : throw new KeyNotFoundException($"There is no '{key}'.");

    /// <summary>The same values under shared names; the dictionary itself where its names or their order are others.</summary>
    public static IReadOnlyDictionary<string, T> Of(IReadOnlyDictionary<string, T> values, string[] names) =>
        values is not ValuesByName<T> && values.Keys.SequenceEqual(names, StringComparer.Ordinal)
            ? new ValuesByName<T>(names, [.. values.Values])
            : values;

    public bool ContainsKey(string key) => Array.IndexOf(names, key) >= 0;

    public bool TryGetValue(string key, [MaybeNullWhen(false)] out T value)
    {
        var at = Array.IndexOf(names, key);
        value = at < 0 ? default : values[at];
        return at >= 0;
    }

    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() => names.Zip(values, KeyValuePair.Create).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
