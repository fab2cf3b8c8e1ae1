using System.Text;
using System.Text.Unicode;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Sheets;

/// <summary>Takes the lines of one student out of a plain table and leaves every other byte as it is.</summary>
public static class StudentLines
{
    /// <summary>What is left of a table, and how many of its records were the student's; a record in quotes may run over lines.</summary>
    /// <param name="table">Its bytes.</param>
    /// <param name="sought">The student.</param>
    /// <returns>Null for bytes that are no table in UTF-8.</returns>
    public static (byte[] Left, int Taken)? Without(byte[] table, SoughtStudent sought)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(sought);
        if (!Utf8.IsValid(table)) return null;
        var text = Encoding.UTF8.GetString(table);
        var plain = text.TrimStart('\uFEFF').ReplaceLineEndings("\n");
        var problems = new ProblemList("");
        var records = CsvReader.Read(plain, CsvReader.SeparatorOf(plain), problems);
        var lines = RawLines.Of(text);
        // A rarer end of line counts as one only when the table is read.
        if (!problems.IsEmpty || plain.Count(letter => letter == '\n') != lines.Count(line => line[^1] is '\r' or '\n')) return null;
        var theirs = StudentRows.Of([.. records.SelectMany(record => record.Fields.Select((field, column) => (record.Line, column, field)))], sought);
        if (theirs.Count == 0) return (table, 0);
        List<int> begins = [.. records.Select(record => record.Line)];
        return (Encoding.UTF8.GetBytes(string.Concat(lines.Where((_, at) => !theirs.Contains(begins[RecordAt(begins, at + 1)])))), theirs.Count);
    }

    /// <summary>Which record a line belongs to: the last that begins at it or before.</summary>
    private static int RecordAt(List<int> begins, int line)
    {
        var at = begins.BinarySearch(line);
        return at >= 0 ? at : ~at - 1;
    }
}
