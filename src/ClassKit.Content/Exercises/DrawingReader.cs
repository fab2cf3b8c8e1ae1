using ClassKit.CellFormulas.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>
/// Reads what is drawn for a part: <c>### Drawing: cut dough</c>, and below it what is seen in each state that the key can name.
/// </summary>
internal static class DrawingReader
{
    private const string Example = "- **under_proofed.** Small bubbles, close together.";

    /// <summary>The drawing; null if there is none, or if it is noted what is wrong with it.</summary>
    /// <param name="sections">The part's sections.</param>
    /// <param name="from">What is chosen from.</param>
    /// <param name="key">The key as written, which names the states.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static Drawing? Read(Sections sections, OptionList from, CellFormula key, ProblemList problems)
    {
        var drawings = sections.Named("Drawing");
        if (drawings.Count == 0)
            return null;
        var (name, section) = drawings[0];
        foreach (var (_, extra) in drawings.Skip(1))
            problems.Add(extra.Line, "The part has a drawing already", "Keep one of them.");
        List<string> known = [.. DrawnThings.All.Select(DrawnThings.Name)];
        if (DrawnThings.Find(name) is not { } thing)
        {
            problems.Add(section.Line, $"Nothing called `{name}` can be drawn", NearestWord.Advice(name, known));
            return null;
        }
        var states = Lists
            .Entries(section, problems)
            .Select(entry => NamedItem.Read(entry.Text, Example, problems))
            .OfType<NamedItem>()
            .ToList();
        foreach (var state in states.Where(state => !DrawnThings.States(thing).Contains(state.Name.Text)))
            problems.Add(
                state.Name.Line,
                $"A {name} cannot be drawn as `{state.Name.Text}`",
                NearestWord.Advice(state.Name.Text, [.. DrawnThings.States(thing)])
            );
        foreach (var state in states.Where(state => from.NumberOf(state.Name.Text) is null))
            problems.Add(
                state.Name.Line,
                $"The drawing shows `{state.Name.Text}`, which is none of the options",
                "Give the option and what is drawn for it one name."
            );
        foreach (
            var option in from.Options.Where(option =>
                key.Names.Contains(option.Id) && states.TrueForAll(state => state.Name.Text != option.Id)
            )
        )
            problems.Add(
                section.Line,
                $"The key may come to `{option.Id}`, and it is not said what is seen then",
                $"Add a line as `{Example}`"
            );
        return new(thing, [.. states.Select(state => new ChoiceOption(state.Name.Text, state.Text.Text))]);
    }
}
