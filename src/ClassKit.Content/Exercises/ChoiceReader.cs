using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>
/// Reads what makes a part one that is answered by choosing: its own list of options or a shared one, and why the right one is right.
/// </summary>
internal static class ChoiceReader
{
    /// <summary>True for a part that is meant to be answered by choosing.</summary>
    public static bool IsMeant(Entries entries, Sections sections) => entries.Has("Options") || sections.Has("Options");

    /// <summary>The choice, or null with the reasons noted.</summary>
    public static Choice? Read(
        string part,
        int line,
        Entries entries,
        Sections sections,
        SharedLists lists,
        NameScope names,
        ProblemList problems
    )
    {
        var own = sections.Optional("Options");
        var shared = entries.Optional("Options");
        var why = sections.Required("Why");
        if (own is not null && shared is not null)
            problems.Add(line, $"The part `{part}` has options of its own and the list `{shared.Value.Text}`", "Keep one of them.");
        var list =
            own is not null ? OptionReader.Read(part, ChoiceKind.Choose, own, names, problems)
            : shared is null ? null
            : lists.Find(shared.Value, problems);
        return list is null || why is null ? null : new(list, why.Prose);
    }
}
