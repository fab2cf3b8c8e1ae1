using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises;
using Markdig.Syntax;

namespace ClassKit.Content.Exercises;

/// <summary>Reads one part: a question, a list with key, unit, tolerance and points, and its misconceptions.</summary>
internal static class PartReader
{
    private static readonly string[] AnswerKinds = ["formula", "number"];

    public static Part? Read(string id, Section section, NameScope names, ProblemList problems)
    {
        var before = problems.Count;
        var (opening, subsections) = section.Split(3);
        var ask = opening with { Blocks = [.. opening.Blocks.TakeWhile(block => block is not ListBlock)] };
        if (ask.Blocks.Count == 0)
            problems.Add(section.Line, $"The part `{id}` asks nothing", "Write the question below its heading.");

        var list = opening with { Blocks = [.. opening.Blocks.Skip(ask.Blocks.Count)] };
        var entries = new Entries(section, Lists.Entries(list, problems), problems);
        var written = entries.Required("Key") is { } text ? FormulaText.Read(text, "The key", names, problems) : null;
        var unit = entries.Required("Unit")?.Text ?? "";
        var tolerance = entries.Required("Tolerance") is { } room ? ToleranceText.Read(room, unit, problems) : null;
        var points = entries.Required("Points") is { } worth ? Number.Read(worth, "`Points`", Bounds.AboveZero, problems) : null;
        var formulaAsked = entries.Required("Answer with") is { } kind && IsFormula(kind, problems);
        entries.Finish();
        var misconceptions = MisconceptionReader.Read(subsections, names, problems);

        // Usable from here on: a part's own key and misconceptions may not use it.
        names.Add(new(id, section.Line), "part", problems);
        return problems.Count == before
            ? new(id, ask.Prose, names.WorkedIn(written!), unit, tolerance!.Value, points!.Value, formulaAsked, misconceptions) { Written = names.AsWritten(written!) }
            : null;
    }

    private static bool IsFormula(Located kind, ProblemList problems)
    {
        if (!AnswerKinds.Contains(kind.Text))
            problems.Add(kind.Line, $"`Answer with` is `{kind.Text}`", NearestWord.Advice(kind.Text, AnswerKinds));
        return kind.Text == "formula";
    }
}
