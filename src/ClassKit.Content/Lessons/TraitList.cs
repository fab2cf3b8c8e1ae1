using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads the traits of a formula's leavening, each <c>- **Onset.** When it begins.</c></summary>
internal static class TraitList
{
    private static readonly string[] Names =
    [
        "Gas source",
        "Onset",
        "Time course",
        "Limit",
        "Crumb",
        "Flavour",
        "Colour",
        "Salt",
        "Failure signs",
        "Choose when",
    ];

    public static LeaveningTraits? Read(Section? section, LessonTexts texts, ProblemList problems)
    {
        var before = problems.Count;
        var traits = new Dictionary<string, TextTemplate>(StringComparer.OrdinalIgnoreCase);
        foreach (
            var item in Lists
                .Entries(section, problems)
                .Select(entry => NamedItem.Read(entry.Text, "- **Onset.** When it begins.", problems))
                .OfType<NamedItem>()
        )
        {
            if (!Names.Contains(item.Name.Text, StringComparer.OrdinalIgnoreCase))
                problems.Add(
                    item.Name.Line,
                    $"`{item.Name.Text}` is not a trait that is known here",
                    NearestWord.Advice(item.Name.Text, Names)
                );
            else if (!traits.TryAdd(item.Name.Text, texts.Read(item.Text)))
                problems.Add(item.Name.Line, $"`{item.Name.Text}` is here a second time", "Put both together.");
        }
        foreach (var missing in Names.Where(name => section is not null && !traits.ContainsKey(name)))
            problems.Add(
                section!.Line,
                $"`{missing}` is missing from the leavening's traits",
                $"Add an item `- **{missing}.** ...`: the comparison has a row for it."
            );
        if (section is null || problems.Count > before)
            return null;
        var all = Names.Select(name => traits[name]).ToArray();
        return new(all[0], all[1], all[2], all[3], all[4], all[5], all[6], all[7], all[8], all[9]);
    }
}
