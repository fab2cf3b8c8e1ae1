using System.Collections;
using ClassKit.CellFormulas.Values;

namespace ClassKit.Exercises.Keys;

/// <summary>What names stand for, looked up where it stands.</summary>
/// <param name="givens">Every given's value by its id.</param>
/// <param name="answers">Answers to parts by their ids, which must not change afterwards.</param>
internal sealed class KeyNames(IReadOnlyDictionary<string, decimal> givens, IReadOnlyDictionary<string, double> answers)
    : IReadOnlyDictionary<string, CellValue>
{
    public int Count => Keys.Count();

    public IEnumerable<string> Keys => givens.Keys.Concat(answers.Keys).Distinct(StringComparer.OrdinalIgnoreCase);

    public IEnumerable<CellValue> Values => Keys.Select(name => this[name]);

    public CellValue this[string key] => TryGetValue(key, out var value) ? value : throw new KeyNotFoundException(key);

    public bool ContainsKey(string key) => TryGetValue(key, out _);

    public bool TryGetValue(string key, out CellValue value)
    {
        if (TryExactly(key, out value))
            return true;
        var written = Keys.FirstOrDefault(name => string.Equals(name, key, StringComparison.OrdinalIgnoreCase));
        return written is not null && TryExactly(written, out value);
    }

    private bool TryExactly(string key, out CellValue value)
    {
        if (answers.TryGetValue(key, out var answer))
        {
            value = CellValue.FromNumber(answer);
            return true;
        }
        var isGiven = givens.TryGetValue(key, out var given);
        value = isGiven ? CellValue.FromNumber((double)given) : default;
        return isGiven;
    }

    public IEnumerator<KeyValuePair<string, CellValue>> GetEnumerator() =>
        Keys.Select(name => KeyValuePair.Create(name, this[name])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
