namespace ClassKit.Desk.Kitchen;

/// <summary>A line of a class profile that a form asks for.</summary>
/// <param name="Key">As it stands in the file.</param>
/// <param name="Label">As the form asks for it.</param>
/// <param name="Example">What might be typed.</param>
/// <param name="IsNeeded">False for one that may be left empty.</param>
public sealed record ProfileField(string Key, string Label, string Example, bool IsNeeded = true)
{
    /// <summary>By what they are about.</summary>
    public static IReadOnlyList<(string Topic, IReadOnlyList<ProfileField> Fields)> Topics { get; } =
    [
        ("The class", [new("students", "Students", "24"), new("teams", "Teams", "6"), new("pieces per team", "Pieces of each bread that a team makes", "6"), new("allergies", "What somebody must keep away from", "[sesame, tree nuts]", false)]),
        ("The period", [new("period", "How long it is", "150 min"), new("starts", "When it begins", "09:00", false), new("time zone", "Time zone", "Europe/Paris", false)]),
        ("The kitchen", [new("kitchen", "What it is called", "My Teaching Kitchen"), new("kitchen temperature", "How warm it is", "22 °C"), new("refrigerator", "Refrigerator", "4 °C", false), new("altitude", "Above the sea", "320 m"), new("scale", "What the scales show", "1 g"), new("small scale", "What the small scale shows", "0.1 g")]),
        ("Ovens and equipment", [new("ovens", "Ovens", "3"), new("oven places", "Tins or trays that go into one", "6", false), new("oven heat-up", "How long they heat up", "20 min", false), new("equipment", "What there is besides, and how many", "[6 burners, 6 scales]", false)]),
        ("Pages", [new("units", "Units: metric, us or both", "both"), new("paper", "Paper: A4 or letter", "A4", false), new("prices", "The price list, as a path from the class’s file", "prices.md", false)]),
    ];

    /// <summary>How the form calls it.</summary>
    public string Name => Key.Replace(' ', '-');
}
