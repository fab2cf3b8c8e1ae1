using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Sheets;

/// <summary>Takes the lines of one student out of a plain table and leaves every other byte as it is.</summary>
public static class StudentLines
{
    /// <summary>What is left of a table, and how many of its records were the student's; a record in quotes may run over lines.</summary>
    /// <param name="table">Its bytes.</param>
    /// <param name="sought">The student.</param>
    /// <returns>Null for bytes that are no table, or whose letters could not be put back as they were.</returns>
    public static (byte[] Left, int Taken)? Without(byte[] table, SoughtStudent sought)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(sought);
        var letters = TableLetters.Of(table);
        var text = letters.GetString(table);
        if (!letters.GetBytes(text).AsSpan().SequenceEqual(table))
            return null;
        var plain = text.TrimStart('\uFEFF').ReplaceLineEndings("\n");
        var problems = new ProblemList("");
        var records = CsvReader.Read(plain, CsvReader.SeparatorOf(plain), problems);
        if (!problems.IsEmpty)
            return null;
        var theirs = StudentRows.Of(
            [.. records.SelectMany(record => record.Fields.Select((field, column) => (record.Line, column, field)))],
            sought
        );
        if (theirs.Count == 0)
            return (table, 0);
        return RawLines.Without(text, records, theirs) is { } left ? (letters.GetBytes(left), theirs.Count) : null;
    }
}
