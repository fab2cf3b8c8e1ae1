using ClassKit.Exercises.Cohorts;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Notes;

/// <summary>How a roster was understood: which column was taken for what, what was left aside, and what had to be guessed.</summary>
internal static class RosterWords
{
    public static string Of(RosterOrigin origin) => string.Join(' ', Sentences(origin));

    private static IEnumerable<string> Sentences(RosterOrigin origin)
    {
        var sheet = origin.Sheet is { } name ? $", sheet “{ShownName.Of(name)}”" : "";
        yield return $"Of the roster{sheet}, {Listed(origin.Taken.Select((column, at) => $"“{ShownName.Of(column.Title)}”{(at == 0 ? " was taken" : "")} for {Field(column.As)}"))}.";
        if (origin.LeftAside.Count > 0)
            yield return $"Left aside: {string.Join(", ", origin.LeftAside.Select(title => $"“{ShownName.Of(title)}”"))}.";
        if (origin.Counting is { } counting)
            yield return $"“{ShownName.Of(counting)}” only counts the lines: who comes after somebody that leaves would get their number, so that it is nobody's id. If it is the school's own after all, call the column `id`.";
        if (origin.Ids == RosterIds.Email)
            yield return "Ids are made of what stands before the @ of the addresses.";
        if (origin.Ids == RosterIds.Name)
            yield return "Students are told apart by their names. If two share one, or results go back to the school's records, add a column with the school's own numbers.";
        if (origin.Others > 0)
            yield return $"{Counted.Of(origin.Others, "line is", "lines are")} of people who are not students of the class, and left out.";
        if (origin.HiddenRows > 0)
            yield return $"{Counted.Of(origin.HiddenRows, "row is", "rows are")} hidden in the workbook, and left out.";
        if (origin.Below.Count > 0)
            yield return $"Below the students stands {Listed(origin.Below.Select(line => $"“{ShownName.Of(line)}”"))}, which was taken for nobody.";
        if (origin.GuessedLetters)
            yield return "Its letters were taken for Windows-1252: look whether accented ones are right, and save it as UTF-8 if not.";
    }

    private static string Field(RosterField field) =>
        field switch
        {
            RosterField.Id => "the id",
            RosterField.Name => "the name",
            RosterField.FirstName => "the first name",
            RosterField.LastName => "the last name",
            RosterField.Email => "the e-mail address",
            RosterField.Team => "the team",
            RosterField.LargePrint => "large print",
            RosterField.ExtraTime => "extra time",
            RosterField.Due => "when a student’s own work is due",
            RosterField.LeavesOut => "exercises that are not a student’s",
            RosterField.ExcusedFrom => "work that a student need not do",
            RosterField.Formerly => "what a student was called before",
        };

    private static string Listed(IEnumerable<string> parts) =>
        parts.ToList() is [.. { Count: > 0 } first, var last] ? $"{string.Join(", ", first)} and {last}" : string.Concat(parts);
}
