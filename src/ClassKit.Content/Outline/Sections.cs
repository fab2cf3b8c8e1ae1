using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Outline;

/// <summary>Asks a document, or a part of one, for its sections, and at the end for those that nobody asked for.</summary>
/// <param name="sections">The sections there are.</param>
/// <param name="mark">How their headings are marked: <c>##</c> or <c>###</c>.</param>
/// <param name="problems">Where to note what is wrong.</param>
/// <param name="others">Headings of other sizes as written, among which a missing section may be.</param>
internal sealed class Sections(IReadOnlyList<Section> sections, string mark, ProblemList problems, params IReadOnlyList<Located> others)
{
    /// <summary>The line of what the sections are part of; null where that is the whole file.</summary>
    public int? Within { get; init; }

    private readonly List<string> _asked = [];
    private readonly List<string> _missing = [];
    private readonly HashSet<Section> _taken = new(ReferenceEqualityComparer.Instance);

    /// <summary>True if there is a section of a heading.</summary>
    public bool Has(string heading) => sections.Any(section => section.Heading.Text.Equals(heading, StringComparison.OrdinalIgnoreCase));

    /// <summary>The section of a heading; noted if it is not there or holds nothing.</summary>
    public Section? Required(string heading)
    {
        if (Optional(heading) is not { } section)
        {
            _missing.Add(heading);
            return null;
        }
        if (section.Blocks.Count > 0)
            return section;
        problems.Add(section.Line, $"The section `{heading}` is empty", "Write below the heading what belongs there.");
        return null;
    }

    /// <summary>The section of a heading, if it is there; a second one of the same heading is noted.</summary>
    public Section? Optional(string heading)
    {
        _asked.Add(heading);
        var found = sections.Where(section => section.Heading.Text.Equals(heading, StringComparison.OrdinalIgnoreCase)).ToList();
        foreach (var extra in found.Skip(1))
            problems.Add(
                extra.Line,
                $"The section `{heading}` is here a second time; the first is in line {found[0].Line}",
                "Put both together or give this one another heading."
            );
        _taken.UnionWith(found);
        return found.FirstOrDefault();
    }

    /// <summary>Every section whose heading begins with a word and a colon, and what stands behind the colon.</summary>
    public IReadOnlyList<(string Name, Section Section)> Named(string word)
    {
        _asked.Add(word + ": name");
        var named = new List<(string, Section)>();
        foreach (var section in sections)
        {
            var colon = section.Heading.Text.IndexOf(':', StringComparison.Ordinal);
            if (colon < 0 || !section.Heading.Text[..colon].Trim().Equals(word, StringComparison.OrdinalIgnoreCase))
                continue;
            named.Add((section.Heading.Text[(colon + 1)..].Trim(), section));
            _taken.Add(section);
        }
        return named;
    }

    /// <summary>Notes every section that is missing and every section that nobody asked for; one that was misspelt is noted once.</summary>
    public void Finish()
    {
        foreach (var section in sections.Where(section => !_taken.Contains(section)))
        {
            problems.Add(
                section.Line,
                $"`{mark} {section.Heading.Text}` is not a section that is known here",
                Advice(section.Heading.Text)
            );
            if (NearestWord.To(section.Heading.Text, _asked) is { } meant)
                _missing.Remove(meant);
        }
        foreach (var heading in _missing)
        {
            if (OtherSize(heading) is var (line, written))
                problems.Add(line, $"`{written}` has the wrong number of #", $"Write `{mark} {heading}`.");
            else if (Unspaced(heading) is { } glued)
                problems.Add(glued, $"`{mark}{heading}` is no heading", $"Put a blank behind the signs: `{mark} {heading}`.");
            else
                problems.Add(
                    Within,
                    $"There is no section `{mark} {heading}`{(Within is null ? "" : " below this heading")}",
                    $"Add the line `{mark} {heading}` and the text that belongs below it."
                );
        }
    }

    /// <summary>The line of a heading whose signs stand right before its words; null if there is none.</summary>
    private int? Unspaced(string heading)
    {
        if (sections is not [{ Source: var source }, ..])
            return null;
        var lines = source.Split('\n');
        var at = Array.FindIndex(lines, line => line.TrimEnd().Equals(mark + heading, StringComparison.OrdinalIgnoreCase));
        return at < 0 ? null : at + 1;
    }

    private (int Line, string Written)? OtherSize(string heading) =>
        others
            .Where(other => other.Text.TrimStart('#').Trim().Equals(heading, StringComparison.OrdinalIgnoreCase))
            .Select(other => ((int, string)?)(other.Line, other.Text))
            .FirstOrDefault();

    private string Advice(string heading)
    {
        var colon = heading.IndexOf(':', StringComparison.Ordinal);
        return
            colon > 0
            && NearestWord.To(
                heading[..colon],
                _asked.Where(asked => asked.EndsWith(": name", StringComparison.Ordinal)).Select(asked => asked[..^": name".Length])
            )
                is { } word
            ? $"Did you mean `{mark} {word}:{heading[(colon + 1)..]}`?"
            : NearestWord.Advice(heading, _asked);
    }
}
