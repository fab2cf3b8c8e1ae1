using ClassKit.Baking.Allergens;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Rosters;

/// <summary>Which columns of a class list speak of allergies, by their titles, and what stands in them.</summary>
internal static class AllergyTitles
{
    /// <summary>
    /// What stands in the titles that schools give such columns, in the languages of <see cref="RosterTitles"/>, in small letters and without
    /// accents: allergies, intolerances, diets, coeliac disease, notes on health; from memory. Better one column too many than one that
    /// nobody hears of.
    /// </summary>
    private static readonly string[] Words =
    [
        "allerg",
        "alerg",
        "intoler",
        "intoller",
        "diet",
        "dieet",
        "diat",
        "regime",
        "unvertraglich",
        "vertraglich",
        "lebensmittel",
        "nahrung",
        "voeding",
        "aliment",
        "coeliac",
        "celiac",
        "celiaq",
        "celiach",
        "coeliak",
        "zoliak",
        "gluten",
        "lactos",
        "lattos",
        "laktos",
        "nuts",
        "peanut",
        "food",
        "avoid",
        "medic",
        "medisch",
        "medizin",
        "health",
        "gezondheid",
        "gesundheit",
        "sante",
        "salud",
        "salute",
        "saude",
        "epipen",
        "anaphyla",
        "anafila",
    ];

    /// <summary>They, and their cells without whose they are; null if there are none.</summary>
    /// <remarks>
    /// A column that was taken for nothing is one as well where a cell of it is an allergen by name, whatever its title.
    /// </remarks>
    public static AllergyColumns? Columns(RosterHead head, IReadOnlyList<CsvRecord> lines)
    {
        List<int> places =
        [
            .. Enumerable
                .Range(0, head.Record.Fields.Count)
                .Except(head.Places.Values)
                .Where(place => Words.Any(WithoutAccents(head.Record.Fields[place]).Contains) || lines.Any(line => NamesOne(line, place))),
        ];
        return places.Count == 0
            ? null
            : new(
                [.. places.Select(place => head.Record.Fields[place].Trim())],
                [
                    .. lines
                        .SelectMany(line => places.Where(place => place < line.Fields.Count).Select(place => line.Fields[place].Trim()))
                        .Where(cell => cell.Length > 0)
                        .Distinct(StringComparer.OrdinalIgnoreCase)
                        .Order(StringComparer.OrdinalIgnoreCase),
                ]
            );
    }

    /// <summary>“ä” is one letter in a list from Windows and two in one from a Mac, and a school may write neither.</summary>
    private static string WithoutAccents(string title) => string.Concat(FoldedWords.Of(title));

    private static bool NamesOne(CsvRecord line, int place) =>
        place < line.Fields.Count
        && line.Fields[place]
            .Split([',', ';', '/', '&', '+', '|'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Any(piece => AllergenWords.Find(piece) is not null);
}
