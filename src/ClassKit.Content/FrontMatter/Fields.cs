using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.FrontMatter;

/// <summary>Asks a front matter for its keys, and at the end for those that nobody asked for.</summary>
/// <param name="fields">The keys there are.</param>
/// <param name="isWhole">False if the front matter was not understood to its end; then no key is called missing.</param>
/// <param name="problems">Where to note what is wrong.</param>
internal sealed class Fields(IReadOnlyList<Field> fields, bool isWhole, ProblemList problems)
{
    private readonly List<string> _asked = [];
    private readonly List<string> _missing = [];

    /// <summary>The value of a key that must be there; noted as missing otherwise.</summary>
    public Located? Text(string key)
    {
        if (Find(key) is not { } field)
            return Missing(key);
        if (field.IsList)
        {
            problems.Add(field.Line, $"`{key}` is a list", $"Write one value: `{key}: value`.");
            return null;
        }
        if (field.Values[0].Text.Length > 0)
            return field.Values[0];
        problems.Add(
            field.Line,
            $"`{key}` is empty",
            $"Write behind the colon {KeyMeaning.Of(key).Means}: `{key}: {KeyMeaning.Of(key).Example}`."
        );
        return null;
    }

    /// <summary>The value of a key that may be left out.</summary>
    public Located? Optional(string key) => Find(key) is null ? null : Text(key);

    /// <summary>A quantity; the stand-in where it is missing or wrong.</summary>
    public T Quantity<T>(string key, Dimension<T> dimension, Bounds bounds, T standIn)
        where T : struct => Text(key) is { } text ? dimension.Read(text, $"`{key}`", bounds, problems) ?? standIn : standIn;

    /// <summary>A whole number.</summary>
    public int Whole(string key, Bounds bounds) => Text(key) is { } text ? Number.ReadWhole(text, $"`{key}`", bounds, problems) ?? 1 : 1;

    /// <summary>One of a few words.</summary>
    public T Choice<T>(string key, IReadOnlyDictionary<string, T> choices)
        where T : struct
    {
        if (Text(key) is not { } text)
            return default;
        if (choices.TryGetValue(text.Text.ToLowerInvariant(), out var chosen))
            return chosen;
        problems.Add(text.Line, $"`{key}` is `{text.Text}`", NearestWord.Advice(text.Text, [.. choices.Keys]));
        return default;
    }

    /// <summary>A list, which may be empty; one value is a list of one, and <c>none</c> of none.</summary>
    public IReadOnlyList<string> List(string key) => [.. Items(key).Select(value => value.Text)];

    /// <summary>The same with the line of each item.</summary>
    public IReadOnlyList<Located> Items(string key)
    {
        if (Find(key) is not { } field)
        {
            Missing(key);
            return [];
        }
        return [.. field.Values.Where(value => value.Text.Length > 0 && !value.Text.Equals("none", StringComparison.OrdinalIgnoreCase))];
    }

    /// <summary>True if a key that may be left out is there.</summary>
    public bool Has(string key) => Find(key) is not null;

    /// <summary>Where a key stands; null if it does not.</summary>
    public int? LineOf(string key) => fields.FirstOrDefault(field => field.Key == key)?.Line;

    /// <summary>Notes every key that is missing and every key that nobody asked for; one that was misspelt is noted once.</summary>
    public void Finish()
    {
        foreach (var field in fields.Where(field => !_asked.Contains(field.Key)))
        {
            problems.Add(field.Line, $"`{field.Key}` is not a key that is known here", NearestWord.Advice(field.Key, _asked));
            if (NearestWord.To(field.Key, _asked) is { } meant)
                _missing.Remove(meant);
        }
        foreach (var key in _missing)
            problems.Add(
                1,
                $"`{key}` is missing at the top of the file",
                $"Add a line such as `{key}: {KeyMeaning.Of(key).Example}` between the two lines of `---`: {KeyMeaning.Of(key).Means}."
            );
    }

    private Field? Find(string key)
    {
        if (!_asked.Contains(key))
            _asked.Add(key);
        return fields.FirstOrDefault(field => field.Key == key);
    }

    private Located? Missing(string key)
    {
        if (isWhole)
            _missing.Add(key);
        return null;
    }
}
