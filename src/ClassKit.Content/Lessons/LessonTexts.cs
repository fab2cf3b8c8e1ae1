using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;
using ClassKit.Lessons.Values;

namespace ClassKit.Content.Lessons;

/// <summary>Reads the texts of one file that may name computed values in braces, and knows where each name stands.</summary>
internal sealed class LessonTexts
{
    private readonly string? _formulaId;
    private readonly List<Placeholder> _read = [];

    /// <summary>Names in braces that no text has been read with.</summary>
    private readonly List<Placeholder> _left;

    /// <summary>For one file.</summary>
    /// <param name="markdown">The file below its front matter, each line where it stands in the file.</param>
    /// <param name="formulaId">The formula whose file it is: its values need no id before them. Null for the lesson's own.</param>
    public LessonTexts(string markdown, string? formulaId)
    {
        _formulaId = formulaId;
        _left = [.. TextTemplate.Parse(markdown).Placeholders];
    }

    /// <summary>The text, each name in it at its line.</summary>
    public TextTemplate Read(Located text) => TextTemplate.Parse(text.Text, (name, _) =>
        {
            var place = _left.Find(each => each.Name == name && each.Line >= text.Line) ?? new($"{{{name}}}", name, text.Line);
            _left.Remove(place);
            _read.Add(place);
            return place with { Name = FullName(name) };
        });

    /// <summary>A section's Markdown; nothing where there is no section.</summary>
    public TextTemplate Read(Section? section) => section is null ? "" : Read(new Located(section.Markdown, section.Line));

    /// <summary>The texts of a list's items.</summary>
    public IReadOnlyList<TextTemplate> Read(IEnumerable<Located> texts) => [.. texts.Select(Read)];

    /// <summary>Notes every name that stands for nothing, and every one that stands where nothing is put in.</summary>
    /// <param name="known">What can be named here, as it is written here.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public void Check(IReadOnlyList<string> known, ProblemList problems)
    {
        foreach (var unknown in _read.Concat(_left).Where(place => !known.Contains(place.Name)))
            problems.Add(unknown.Line, $"`{unknown.Written}` stands for no computed value", Advice(unknown.Name, known));
        foreach (var idle in _left.Where(place => known.Contains(place.Name)))
            problems.Add(
                idle.Line,
                $"`{idle.Written}` stands where no value is put in",
                "Name values in sentences only: not in headings, names, sources or what is set out."
            );
    }

    private string FullName(string name) => _formulaId is null || ValueNames.OfClass.Contains(name) ? name : $"{_formulaId}.{name}";

    /// <summary>The nearest name; where there is none, those of the formula that is named, or of the class.</summary>
    private static string Advice(string name, IReadOnlyList<string> known)
    {
        var point = name.IndexOf('.', StringComparison.Ordinal);
        var formula = point > 0 ? name[..(point + 1)] : "";
        var near = known
            .Where(each =>
                formula.Length > 0 ? each.StartsWith(formula, StringComparison.Ordinal) : !each.Contains('.', StringComparison.Ordinal)
            )
            .ToList();
        return NearestWord.Advice(name, near.Count > 0 ? near : known);
    }
}
