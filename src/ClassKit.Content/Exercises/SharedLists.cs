using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>
/// The lists of options that several parts choose from, each in a section of its own: <c>## Options: causes</c>, or <c>## Order: steps</c>
/// where parts are places in an order.
/// </summary>
internal sealed class SharedLists
{
    private readonly Dictionary<string, (OptionList? List, Section Section)> _lists = [];
    private readonly Dictionary<string, int> _used = [];

    /// <summary>Reads them.</summary>
    public static SharedLists Read(Sections sections, NameScope names, ProblemList problems)
    {
        var lists = new SharedLists();
        foreach (var (word, kind) in new[] { ("Options", ChoiceKind.Match), ("Order", ChoiceKind.Order) })
        {
            foreach (var (name, section) in sections.Named(word))
            {
                if (!Naming.IsValid(name))
                    problems.Add(section.Line, $"`{name}` cannot be the name of a list", $"Use {Naming.Rule}.");
                else if (names.IsTaken(name))
                    problems.Add(section.Line, $"The list `{name}` is called as a given, a step or a part is", "Give it another name.");
                else if (!lists._lists.TryAdd(name, (OptionReader.Read(name, kind, section, names, problems), section)))
                    problems.Add(
                        section.Line,
                        $"There is a list `{name}` in line {lists._lists[name].Section.Line} already",
                        "Give this one another name."
                    );
            }
        }
        return lists;
    }

    /// <summary>The list of a name; null with the reason noted.</summary>
    public OptionList? Find(Located name, ProblemList problems)
    {
        if (_lists.TryGetValue(name.Text, out var known))
        {
            _used[name.Text] = _used.GetValueOrDefault(name.Text) + 1;
            return known.List;
        }
        problems.Add(
            name.Line,
            $"There is no list `{name.Text}`",
            _lists.Count == 0 ? $"Add a section `## Options: {name.Text}`." : NearestWord.Advice(name.Text, _lists.Keys)
        );
        return null;
    }

    /// <summary>Notes two parts of an order that come to the same step: each step has one place.</summary>
    public static void CheckPlaces(IReadOnlyList<(Part? Part, int Line)> parts, ProblemList problems)
    {
        var taken = new Dictionary<(string List, string Step), int>();
        foreach (var (part, line) in parts)
        {
            // A key that is one name comes to that step for everybody.
            if (
                part is not { Choice.From: { Kind: ChoiceKind.Order } list, Written: { Names: [var step] } written }
                || written.Text != $"={step}"
            )
                continue;
            if (!taken.TryAdd((list.Id, step), line))
                problems.Add(
                    line,
                    $"The key is `{step}`, as in line {taken[(list.Id, step)]}",
                    $"Every step of the order `{list.Id}` has one place: name the step that comes here."
                );
        }
    }

    /// <summary>Notes lists that nothing is chosen from, and orders without a part for each place.</summary>
    public void Finish(ProblemList problems)
    {
        foreach (var (name, (list, section)) in _lists)
        {
            var uses = _used.GetValueOrDefault(name);
            if (uses == 0)
                problems.Add(
                    section.Line,
                    $"No part chooses from the list `{name}`",
                    $"Add `- Options: {name}` to the parts that do, or take the list out."
                );
            else if (list is { Kind: ChoiceKind.Order } && uses != list.Options.Count)
                problems.Add(
                    section.Line,
                    $"{uses} parts ask for a place in the order `{name}`, which has {list.Options.Count}",
                    "Ask for every place once."
                );
        }
    }
}
