using ClassKit.Content.Sheets;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Rosters;

/// <summary>Which columns of a class list speak of allergies, by their titles, and what stands in them.</summary>
internal static class AllergyTitles
{
    /// <summary>
    /// Beginnings of what schools call such columns, in the languages of <see cref="RosterTitles"/>, in small letters: allergies,
    /// intolerances, dietary needs; Allergien, Unverträglichkeiten; alergias; intolleranze.
    /// </summary>
    private static readonly string[] Words = ["allerg", "alerg", "intoler", "intoller", "dietary", "unverträglich", "epipen", "anaphyla"];

    /// <summary>They, and their cells without whose they are; null if there are none.</summary>
    public static AllergyColumns? Columns(RosterHead head, IReadOnlyList<CsvRecord> lines)
    {
        List<int> places =
        [
            .. Enumerable
                .Range(0, head.Record.Fields.Count)
                .Except(head.Places.Values)
                .Where(place => Words.Any(RosterTitles.Plain(head.Record.Fields[place]).Contains)),
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
}
