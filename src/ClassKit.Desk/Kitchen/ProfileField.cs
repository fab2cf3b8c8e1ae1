namespace ClassKit.Desk.Kitchen;

/// <summary>A line of a class profile that a form asks for.</summary>
/// <param name="Key">As it stands in the file.</param>
/// <param name="Label">As the form asks for it.</param>
/// <param name="Example">What might be typed.</param>
/// <param name="IsNeeded">False for one that may be left empty.</param>
public sealed record ProfileField(string Key, string Label, string Example, bool IsNeeded = true)
{
    /// <summary>The unit that a bare number has, unless the file has another one there; null where none is needed.</summary>
    public string? Unit { get; init; }

    /// <summary>True for several things, which stand in brackets in the file.</summary>
    public bool IsList { get; init; }

    /// <summary>What can be chosen, as it stands in the file and in words; empty where it is typed.</summary>
    public IReadOnlyList<(string InFile, string Words)> Choices { get; init; } = [];

    /// <summary>By what they are about.</summary>
    public static IReadOnlyList<(string Topic, IReadOnlyList<ProfileField> Fields)> Topics { get; } =
    [
        (
            "The class",
            [
                new("students", "Students", "24"),
                new("teams", "Teams", "6"),
                new("pieces per team", "Pieces of each bread that a team makes", "6"),
                new("allergies", "What somebody must keep away from, with commas between", "sesame, tree nuts", false) { IsList = true },
            ]
        ),
        (
            "The period",
            [
                new("period", "How long it is", "150 min") { Unit = "min" },
                new("starts", "When it begins", "09:00", false),
                new(TimeZone, "Where its clocks are: the city of the time zone", "Paris", false),
            ]
        ),
        (
            "The kitchen",
            [
                new("kitchen", "What it is called", "My Teaching Kitchen"),
                new("kitchen temperature", "How warm it is", "22 °C") { Unit = "°C" },
                new("refrigerator", "Refrigerator", "4 °C", false) { Unit = "°C" },
                new("altitude", "How high it lies above the sea", "320 m") { Unit = "m" },
                new("scale", "The smallest step that the scales show", "1 g") { Unit = "g" },
                new("small scale", "The smallest step that the small scale shows", "0.1 g") { Unit = "g" },
            ]
        ),
        (
            "Ovens and equipment",
            [
                new("ovens", "Ovens", "3"),
                new("oven places", "Tins or trays that go into one", "6", false),
                new("oven heat-up", "How long they heat up", "20 min", false) { Unit = "min" },
                new("equipment", "What there is besides, and how many, with commas between", "6 burners, 6 scales", false)
                {
                    IsList = true,
                },
            ]
        ),
        (
            "Pages",
            [
                new(Units, "Measures on cards and pages", "both")
                {
                    Choices = [("metric", "grams, litres and °C"), ("us", "ounces, cups and °F"), ("both", "both, side by side")],
                },
                new("paper", "Paper", "A4", false)
                {
                    Choices = [("", "A4, unless a page says otherwise"), ("A4", "A4"), ("letter", "US letter")],
                },
                new(Prices, "The price list", "prices.md", false),
                new("roster", "The class list, where it says who is in which team", "roster.csv", false),
            ]
        ),
    ];

    /// <summary>The line that names a price list: one of those in the folder is chosen.</summary>
    public const string Prices = "prices";

    /// <summary>The line that names the measures.</summary>
    public const string Units = "units";

    /// <summary>The line that names a time zone.</summary>
    public const string TimeZone = "time zone";

    /// <summary>How the form calls it.</summary>
    public string Name => Key.Replace(' ', '-');
}
