using System.Globalization;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Rosters;

/// <summary>
/// Numbers that only count the lines of a list. They are nobody's: when somebody leaves and the list is numbered anew, each goes to the next,
/// and whatever was handed out, marked and arranged would go with it.
/// </summary>
public static class RunningNumbers
{
    /// <summary>No class has as many lines, and a school's own numbers are longer.</summary>
    private const int Most = 999;

    /// <summary>Titles that say no more than that there is a number; <c>id</c> or <c>student number</c> say whose.</summary>
    private static readonly string[] Titles = ["no", "number", "code", "rollno", "rollnumber", "indexno", "indexnumber"];

    /// <summary>True of cells that are all small whole numbers, or empty; false where all are empty.</summary>
    public static bool Are(IEnumerable<string> cells)
    {
        List<string> filled = [.. cells.Select(cell => cell.Trim().TrimEnd('.')).Where(cell => cell.Length > 0)];
        return filled.Count > 0
            && filled.TrueForAll(cell =>
                int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= Most
            );
    }

    /// <summary>The head without ids where its column of them only counts the lines, and what that column is called; else null.</summary>
    internal static (RosterHead Head, string Title)? Without(RosterHead head, IReadOnlyList<CsvRecord> lines) =>
        head.Places.TryGetValue(RosterField.Id, out var at)
        && Titles.Contains(RosterTitles.Plain(head.Record.Fields[at]))
        && Are(lines.Select(line => head.Field(line, RosterField.Id)))
            ? (head with { Places = head.Places.Where(place => place.Key != RosterField.Id).ToDictionary() }, head.Record.Fields[at].Trim())
            : null;
}
