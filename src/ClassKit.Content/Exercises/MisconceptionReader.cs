using ClassKit.CellFormulas.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>Reads a part's misconceptions: a heading with the name, the formula in the first paragraph, then the words.</summary>
internal static class MisconceptionReader
{
    /// <summary>Reads them; whatever else nobody has asked the part's sections for is noted.</summary>
    /// <param name="part">The part's id.</param>
    /// <param name="sections">The part's sections.</param>
    /// <param name="names">What a formula may use.</param>
    /// <param name="chosen">The key of a part that is answered by choosing; null for any other.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static IReadOnlyList<Misconception> Read(
        string part,
        Sections sections,
        NameScope names,
        CellFormula? chosen,
        ProblemList problems
    )
    {
        var misconceptions = new List<Misconception>();
        var lines = new Dictionary<string, int>();
        foreach (var (id, section) in sections.Named("Misconception"))
        {
            if (!Naming.IsValid(id))
                problems.Add(section.Line, $"`{id}` cannot be the name of a misconception", $"Use {Naming.Rule}.");
            else if (!lines.TryAdd(id, section.Line))
                problems.Add(
                    section.Line,
                    $"The part has a misconception `{id}` in line {lines[id]} already",
                    "Give this one another name."
                );
            names.Places.Note(new(Part: part, Misconception: id), section.Line);
            if (Read(id, section, names, chosen, problems) is { } misconception)
                misconceptions.Add(misconception);
        }
        sections.Finish();
        return misconceptions;
    }

    private static Misconception? Read(string id, Section section, NameScope names, CellFormula? chosen, ProblemList problems)
    {
        if (section.Blocks.Count == 0)
        {
            problems.Add(
                section.Line,
                $"The misconception `{id}` is empty",
                "Write its formula below the heading, then the words that set it right."
            );
            return null;
        }
        var written = FormulaText.Read(Section.TextOf(section.Blocks[0], section.Source), $"The misconception `{id}`", names, problems);
        var words = section with { Blocks = [.. section.Blocks.Skip(1)] };
        if (written is not null && words.Blocks.Count == 0)
            problems.Add(
                section.Line,
                $"The misconception `{id}` has no words",
                "Below its formula, tell the student in a sentence or two what went wrong and what is right."
            );
        if (written is null || words.Blocks.Count == 0)
            return null;
        var formula = names.WorkedIn(written);
        if (chosen is not null && ChoiceFormula.UnlessRight(formula, chosen) is var unlessRight)
        {
            if (unlessRight is null)
                problems.Add(
                    section.Line,
                    $"The misconception `{id}` picks the right option",
                    "Name one that is wrong, or give a formula that picks a wrong one."
                );
            formula = unlessRight ?? formula;
        }
        return new(id, formula, words.Prose) { Written = names.AsWritten(written) };
    }
}
