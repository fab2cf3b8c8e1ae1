using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>Reads a part's misconceptions: a heading with the name, the formula in the first paragraph, then the words.</summary>
internal static class MisconceptionReader
{
    public static IReadOnlyList<Misconception> Read(string part, IReadOnlyList<Section> subsections, NameScope names, ProblemList problems)
    {
        var sections = new Sections(subsections, "###", problems);
        var misconceptions = new List<Misconception>();
        var lines = new Dictionary<string, int>();
        foreach (var (id, section) in sections.Named("Misconception"))
        {
            if (!Naming.IsValid(id))
                problems.Add(section.Line, $"`{id}` cannot be the name of a misconception", $"Use {Naming.Rule}.");
            else if (!lines.TryAdd(id, section.Line))
                problems.Add(section.Line, $"The part has a misconception `{id}` in line {lines[id]} already", "Give this one another name.");
            names.Places.Note(new(Part: part, Misconception: id), section.Line);
            if (Read(id, section, names, problems) is { } misconception)
                misconceptions.Add(misconception);
        }
        sections.Finish();
        return misconceptions;
    }

    private static Misconception? Read(string id, Section section, NameScope names, ProblemList problems)
    {
        if (section.Blocks.Count == 0)
        {
            problems.Add(section.Line, $"The misconception `{id}` is empty", "Write its formula below the heading, then the words that set it right.");
            return null;
        }
        var written = FormulaText.Read(Section.TextOf(section.Blocks[0], section.Source), $"The misconception `{id}`", names, problems);
        var words = section with { Blocks = [.. section.Blocks.Skip(1)] };
        if (written is not null && words.Blocks.Count == 0)
            problems.Add(section.Line, $"The misconception `{id}` has no words", "Below its formula, tell the student in a sentence or two what went wrong and what is right.");
        return written is null || words.Blocks.Count == 0 ? null : new(id, names.WorkedIn(written), words.Prose) { Written = names.AsWritten(written) };
    }
}
