using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Lettering;

namespace ClassKit.Content.Exercises;

/// <summary>Reads what can be chosen for an answer: a list whose items begin with the option's name in bold.</summary>
internal static class OptionReader
{
    private const string Example = "- **too_warm.** The dough was too warm.";

    /// <summary>The list, or null with the reasons noted.</summary>
    /// <param name="id">The list's name, or that of its part.</param>
    /// <param name="kind">What it is for.</param>
    /// <param name="section">Where it stands.</param>
    /// <param name="names">The names that are taken.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static OptionList? Read(string id, ChoiceKind kind, Section section, NameScope names, ProblemList problems)
    {
        var before = problems.Count;
        var options = Lists
            .Entries(section, problems)
            .Select(entry => NamedItem.Read(entry.Text, Example, problems))
            .OfType<NamedItem>()
            .ToList();
        foreach (var (index, option) in options.Index())
        {
            var earlier = options.Take(index);
            if (!Naming.IsValid(option.Name.Text))
                problems.Add(option.Name.Line, $"`{option.Name.Text}` cannot be the name of an option", $"Use {Naming.Rule}.");
            else if (earlier.FirstOrDefault(other => other.Name.Text == option.Name.Text) is { } same)
                problems.Add(
                    option.Name.Line,
                    $"The list has an option `{option.Name.Text}` in line {same.Name.Line} already",
                    "Give this one another name."
                );
            else if (names.IsTaken(option.Name.Text))
                problems.Add(
                    option.Name.Line,
                    $"The option `{option.Name.Text}` is called as a given, a step or a part is",
                    "Give it another name: keys use them all."
                );
            if (earlier.FirstOrDefault(other => OptionWords.Folded(other.Text.Text) == OptionWords.Folded(option.Text.Text)) is { } alike)
                problems.Add(
                    option.Text.Line,
                    $"The option `{option.Name.Text}` reads like `{alike.Name.Text}` in line {alike.Name.Line}",
                    "Say something else: a student may answer with an option's words."
                );
        }
        if (problems.Count == before && options.Count is < OptionList.Fewest or > OptionList.Most)
            problems.Add(
                section.Line,
                $"There are {options.Count} options to choose from",
                $"List {OptionList.Fewest} to {OptionList.Most}, each as `{Example}`"
            );
        return problems.Count == before
            ? new(id, kind, [.. options.Select(option => new ChoiceOption(option.Name.Text, option.Text.Text))])
            : null;
    }
}
