using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Outline;

/// <summary>A list of <c>- Name: value</c> lines, asked by name, and at the end for those that nobody asked for.</summary>
internal sealed class Entries(Section section, IReadOnlyList<ListEntry> list, ProblemList problems)
{
    private readonly List<string> _asked = [];
    private readonly List<string> _missing = [];
    private readonly IReadOnlyList<(string Name, Located Value)> _entries = [.. list.Select(Part)];

    /// <summary>The value behind a name, or null with the reason noted.</summary>
    public Located? Required(string name)
    {
        if (!Has(name))
            _missing.Add(name);
        return Optional(name);
    }

    /// <summary>True if there is a line of that name.</summary>
    public bool Has(string name) => _entries.Any(entry => entry.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The value behind a name that may be left out; null also where it is empty, with the reason noted.</summary>
    public Located? Optional(string name)
    {
        _asked.Add(name);
        var found = _entries.Where(entry => entry.Name.Equals(name, StringComparison.OrdinalIgnoreCase)).ToList();
        foreach (var (_, extra) in found.Skip(1))
            problems.Add(extra.Line, $"`{name}` is here a second time; the first is in line {found[0].Value.Line}", "Keep one of them.");
        if (found.Count > 0 && found[0].Value.Text.Length == 0)
            problems.Add(found[0].Value.Line, $"`{name}` is empty", "Write its value behind the colon.");
        return found.Count > 0 && found[0].Value.Text.Length > 0 ? found[0].Value : null;
    }

    /// <summary>Notes every line that is missing and every line that nobody asked for; one that was misspelt is noted once.</summary>
    public void Finish()
    {
        foreach (var (name, value) in _entries.Where(entry => !_asked.Contains(entry.Name, StringComparer.OrdinalIgnoreCase)))
        {
            problems.Add(value.Line, $"`{name}` is not known here", NearestWord.Advice(name, _asked));
            if (NearestWord.To(name, _asked) is { } meant)
                _missing.Remove(meant);
        }
        foreach (var name in _missing)
            problems.Add(section.Line, $"`{section.Heading.Text}` has no line `- {name}: ...`", "Add it to the list below the question.");
    }

    private static (string, Located) Part(ListEntry entry)
    {
        var colon = entry.Text.Text.IndexOf(':', StringComparison.Ordinal);
        return colon < 0
            ? (entry.Text.Text, new("", entry.Text.Line))
            : (entry.Text.Text[..colon].Trim(), new(entry.Text.Text[(colon + 1)..].Trim(), entry.Text.Line));
    }
}
