using ClassKit.Content.Sheets;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Rosters;

/// <summary>The line of a table that names its columns, and what they were taken for.</summary>
/// <param name="At">Its place among the table's records.</param>
/// <param name="Record">The line.</param>
/// <param name="Places">The column of each field.</param>
internal sealed record RosterHead(int At, CsvRecord Record, IReadOnlyDictionary<RosterField, int> Places)
{
    /// <summary>How far down a title, a date and a room may push the line.</summary>
    private const int Deepest = 20;

    /// <summary>True if the columns say who the students are.</summary>
    public bool NamesStudents =>
        Places.ContainsKey(RosterField.Name) || (Places.ContainsKey(RosterField.FirstName) && Places.ContainsKey(RosterField.LastName));

    /// <summary>The columns that were taken for something, in the order of the file.</summary>
    public IReadOnlyList<TakenColumn> Taken =>
        [.. Places.OrderBy(place => place.Value).Select(place => new TakenColumn(Title(place.Value), place.Key))];

    /// <summary>The titles of the others.</summary>
    public IReadOnlyList<string> LeftAside =>
        [.. Enumerable.Range(0, Record.Fields.Count).Except(Places.Values).Select(Title).Where(title => title.Length > 0)];

    /// <summary>The first line that names students' columns, else the fullest of the first; null for a table without lines.</summary>
    public static RosterHead? Of(SheetTable table)
    {
        var heads = table.Records.Take(Deepest).Select((record, at) => new RosterHead(at, record, Taking(record)));
        return heads.FirstOrDefault(head => head is { NamesStudents: true, Places.Count: > 1 })
            ?? heads.FirstOrDefault(head => head.NamesStudents)
            ?? heads.MaxBy(head => head.Record.Fields.Count(field => field.Trim().Length > 0));
    }

    /// <summary>A field of a line, without the blanks around it; empty where there is none.</summary>
    public string Field(CsvRecord record, RosterField field) =>
        Places.TryGetValue(field, out var place) && place < record.Fields.Count ? record.Fields[place].Trim() : "";

    private static Dictionary<RosterField, int> Taking(CsvRecord record)
    {
        var places = record
            .Fields.Select((title, place) => (Place: place, Meaning: RosterTitles.Meaning(title)))
            .Where(column => column.Meaning is not null)
            .GroupBy(column => column.Meaning!.Value.Field)
            .ToDictionary(columns => columns.Key, columns => columns.MinBy(column => column.Meaning!.Value.Rank).Place);

        ReadFirst(record, places);
        // Names apart are surer than one column, which may be a short name or turned about.
        if (places.ContainsKey(RosterField.FirstName) && places.ContainsKey(RosterField.LastName))
            places.Remove(RosterField.Name);
        else if (places.ContainsKey(RosterField.Name))
            _ = places.Remove(RosterField.FirstName) | places.Remove(RosterField.LastName);
        return places;
    }

    /// <summary>What stands for a first name may be more, or make another column less: it depends on what stands beside it.</summary>
    private static void ReadFirst(CsvRecord record, Dictionary<RosterField, int> places)
    {
        if (!places.TryGetValue(RosterField.FirstName, out var first) || places.ContainsKey(RosterField.LastName))
            return;
        var title = RosterTitles.Plain(record.Fields[first]);
        // "Name" beside "Vorname" is the family's.
        if (title == "vorname" && places.TryGetValue(RosterField.Name, out var name))
            places[RosterField.LastName] = name;
        // "Nome" and "nombre" are first names beside a family's, and whole ones alone.
        if (title is not ("nome" or "nombre") || places.ContainsKey(RosterField.Name))
            return;
        places.Remove(RosterField.FirstName);
        places[RosterField.Name] = first;
    }

    private string Title(int place) => Record.Fields[place].Trim();
}
