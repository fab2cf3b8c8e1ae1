using ClassKit.CellFormulas.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using Markdig.Syntax;

namespace ClassKit.Content.Exercises;

/// <summary>Reads one part: a question, a list with key, unit, tolerance and points, and its misconceptions.</summary>
internal static class PartReader
{
    private static readonly string[] AnswerKinds = ["formula", "number", WordsReader.Kind];

    public static Part? Read(string id, Section section, NameScope names, SharedLists lists, ProblemList problems)
    {
        var before = problems.Count;
        var (opening, subsections) = section.Split(3);
        var ask = opening with { Blocks = [.. opening.Blocks.TakeWhile(block => block is not ListBlock)] };
        if (ask.Blocks.Count == 0)
            problems.Add(section.Line, $"The part `{id}` asks nothing", "Write the question below its heading.");

        var list = opening with { Blocks = [.. opening.Blocks.Skip(ask.Blocks.Count)] };
        var entries = new Entries(section, Lists.Entries(list, problems), problems);
        var sections = new Sections(subsections, "###", problems) { Within = section.Line };
        var part =
            WordsReader.IsMeant(sections) ? ReadWords(id, ask.Prose, section.Line, entries, sections, names, problems)
            : ChoiceReader.IsMeant(entries, sections) ? ReadChoice(id, ask.Prose, section.Line, entries, sections, lists, names, problems)
            : ReadNumber(id, ask.Prose, section.Line, entries, sections, names, problems);
        names.Places.Note(new(Part: id), section.Line);
        return problems.Count == before ? part : null;
    }

    private static Part? ReadNumber(
        string id,
        string ask,
        int line,
        Entries entries,
        Sections sections,
        NameScope names,
        ProblemList problems
    )
    {
        var written = entries.Required("Key") is { } text ? FormulaText.Read(text, "The key", names, problems) : null;
        var unit = ReadUnit(entries, problems);
        var tolerance = ReadTolerance(entries, unit, written is null ? null : names.WorkedIn(written), problems);
        var points = ReadPoints(entries, problems);
        var formulaAsked = entries.Required("Answer with") is { } kind && IsFormula(kind, problems);
        entries.Finish();
        var misconceptions = MisconceptionReader.Read(id, sections, names, null, problems);
        // Usable from here on: a part's own key and misconceptions may not use it.
        names.Add(new(id, line), "part", problems);
        return written is null || tolerance is null || points is null
            ? null
            : new(id, ask, names.WorkedIn(written), unit, tolerance.Value, points.Value, formulaAsked, misconceptions)
            {
                Written = names.AsWritten(written),
            };
    }

    /// <summary>Its key names an option, so that it has no unit, and is right or not.</summary>
    private static Part? ReadChoice(
        string id,
        string ask,
        int line,
        Entries entries,
        Sections sections,
        SharedLists lists,
        NameScope names,
        ProblemList problems
    )
    {
        var choice = ChoiceReader.Read(id, line, entries, sections, lists, names, problems);
        names.Offer(choice?.From);
        var written = entries.Required("Key") is { } text && choice is not null ? FormulaText.Read(text, "The key", names, problems) : null;
        var points = ReadPoints(entries, problems);
        entries.Finish();
        var key = written is null ? null : names.WorkedIn(written);
        var drawing = written is null ? null : DrawingReader.Read(sections, choice!.From, written, problems);
        var misconceptions = key is null ? Unread(sections) : MisconceptionReader.Read(id, sections, names, key, problems);
        var asWritten = written is null ? null : names.AsWritten(written);
        names.Offer(null);
        names.AddUncomputed(new(id, line), "with a letter", problems);
        return key is null || points is null
            ? null
            : new(id, ask, key, "", Tolerance.Absolute(0), points.Value, false, misconceptions)
            {
                Written = asWritten,
                Choice = choice! with { Drawing = drawing },
            };
    }

    /// <summary>Nothing can be held against it, so that it has no key, no unit and no misconceptions.</summary>
    private static Part? ReadWords(
        string id,
        string ask,
        int line,
        Entries entries,
        Sections sections,
        NameScope names,
        ProblemList problems
    )
    {
        var words = WordsReader.Read(entries, sections, problems);
        var points = ReadPoints(entries, problems);
        entries.Finish();
        names.AddUncomputed(new(id, line), "in words", problems);
        return words is null || points is null
            ? null
            : new(id, ask, WordsAsked.NoKey, Unit.None, Tolerance.Absolute(0), points.Value, false, []) { InWords = words };
    }

    /// <summary>
    /// Without options or key nobody knows what a misconception picks; whatever else is wrong with the part's sections is noted all the
    /// same.
    /// </summary>
    private static IReadOnlyList<Misconception> Unread(Sections sections)
    {
        sections.Named("Misconception");
        sections.Finish();
        return [];
    }

    private static Unit ReadUnit(Entries entries, ProblemList problems)
    {
        if (entries.Required("Unit") is not { } unit)
            return Unit.None;
        UnitWords.Note(Unit.Of(unit.Text), unit.Line, problems);
        return Unit.Of(unit.Text);
    }

    private static decimal? ReadPoints(Entries entries, ProblemList problems) =>
        entries.Required("Points") is { } worth ? (decimal?)Number.Read(worth, "`Points`", Bounds.Worth, problems) : null;

    /// <summary>How exact an answer must be: a tolerance, or a rounding in its place.</summary>
    private static Tolerance? ReadTolerance(Entries entries, Unit unit, CellFormula? key, ProblemList problems)
    {
        if (!entries.Has("Rounding"))
            return entries.Required("Tolerance") is { } room ? ToleranceText.Read(room, unit, problems) : null;
        if (entries.Optional("Tolerance") is { } both)
            problems.Add(
                both.Line,
                "There are both a `Tolerance` and a `Rounding`",
                "Keep one: a tolerance says how far off an answer may be, a rounding that it must round to the same."
            );
        if (entries.Optional("Rounding") is not { } step || ToleranceText.ReadRounding(step, unit, problems) is not { } rounding)
            return null;
        if (key is not null && KeyRounding.Of(key) is { Way: not KeyRounding.Direction.Nearest and var way })
            DoubtNearest(step, way, unit, problems);
        return rounding;
    }

    /// <summary>A key that rounds up or down beside a line that says to the nearest: one of the two says what was not meant.</summary>
    private static void DoubtNearest(Located step, KeyRounding.Direction way, Unit unit, ProblemList problems) =>
        problems.Doubt(
            step.Line,
            $"The key rounds {(way == KeyRounding.Direction.Up ? "up" : "down")}, and `Rounding` says to the nearest `{step.Text}`",
            $"Write `- Tolerance: {$"0 {unit}".TrimEnd()}` in its place, if only what the key gives is right. Or leave the rounding out of the key, if any answer is right that rounds to the same."
        );

    private static bool IsFormula(Located kind, ProblemList problems)
    {
        if (kind.Text == WordsReader.Kind)
            problems.Add(kind.Line, "It is not said what is looked for in an answer in words", WordsReader.Advice);
        if (!AnswerKinds.Contains(kind.Text))
            problems.Add(kind.Line, $"`Answer with` is `{kind.Text}`", NearestWord.Advice(kind.Text, AnswerKinds));
        return kind.Text == "formula";
    }
}
