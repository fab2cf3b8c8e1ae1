using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;
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
        var tolerance = ReadTolerance(entries, unit, problems);
        var points = entries.Required("Points") is { } worth ? Number.Read(worth, "`Points`", Bounds.Worth, problems) : null;
        var formulaAsked = entries.Required("Answer with") is { } kind && IsFormula(kind, problems);
        entries.Finish();
        var misconceptions = MisconceptionReader.Read(id, subsections, names, problems);

        // Usable from here on: a part's own key and misconceptions may not use it.
        names.Add(new(id, section.Line), "part", problems);
        names.Places.Note(new(Part: id), section.Line);
        return problems.Count == before
            ? new(id, ask.Prose, names.WorkedIn(written!), unit, tolerance!.Value, (decimal)points!.Value, formulaAsked, misconceptions) { Written = names.AsWritten(written!) }
            : null;
    }

    /// <summary>How exact an answer must be: a tolerance, or a rounding in its place.</summary>
    private static Tolerance? ReadTolerance(Entries entries, string unit, ProblemList problems)
    {
        if (!entries.Has("Rounding")) return entries.Required("Tolerance") is { } room ? ToleranceText.Read(room, unit, problems) : null;
        if (entries.Optional("Tolerance") is { } both)
            problems.Add(both.Line, "There are both a `Tolerance` and a `Rounding`", "Keep one: a tolerance says how far off an answer may be, a rounding that it must round to the same.");
        return entries.Optional("Rounding") is { } step ? ToleranceText.ReadRounding(step, unit, problems) : null;
    }

    private static bool IsFormula(Located kind, ProblemList problems)
    {
        if (!AnswerKinds.Contains(kind.Text))
            problems.Add(kind.Line, $"`Answer with` is `{kind.Text}`", NearestWord.Advice(kind.Text, AnswerKinds));
        return kind.Text == "formula";
    }
}
