using System.Globalization;
using System.Text;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Marking;

namespace ClassKit.Content.Classes;

/// <summary>Writes corrections at the end of an instructor's table, in the table's own way: its columns, separator and line ends.</summary>
public static class CorrectionsAppender
{
    /// <summary>What is to be added to the file.</summary>
    /// <param name="table">The bytes of the table as it is, which <see cref="CorrectionsReader"/> could read; null if there is none yet.</param>
    /// <param name="corrections">In order.</param>
    public static byte[] Lines(byte[]? table, IReadOnlyList<Correction> corrections)
    {
        ArgumentNullException.ThrowIfNull(corrections);
        var text = Encoding.UTF8.GetString(table ?? []).TrimStart('\uFEFF');
        var end = text.Contains('\n', StringComparison.Ordinal) && !text.Contains("\r\n", StringComparison.Ordinal) ? "\n"
            : text.Contains('\r', StringComparison.Ordinal) && !text.Contains('\n', StringComparison.Ordinal) ? "\r" : "\r\n";
        var plain = text.ReplaceLineEndings("\n");
        var separator = CsvReader.SeparatorOf(plain);
        var head = CsvReader.Read(plain, separator, new ProblemList("")).FirstOrDefault(record => !record.IsBlank)?.Fields.Select(field => field.Trim().ToLowerInvariant()).ToList();

        var added = new StringBuilder();
        if (plain.Length > 0 && !plain.EndsWith('\n')) added.Append(end);
        if (head is null) added.AppendJoin(separator, CorrectionsReader.Columns).Append(end);
        foreach (var correction in corrections)
            added.AppendJoin(separator, (head ?? [.. CorrectionsReader.Columns]).Select(column => Quoted(Field(correction, column, separator), separator))).Append(end);
        return Encoding.UTF8.GetBytes(added.ToString());
    }

    private static string Field(Correction correction, string column, char separator) => column switch
    {
        "student" => correction.Student,
        "part" => $"{correction.Exercise}.{correction.Part}",

        // Where fields are kept apart by something else than the comma, the comma is the decimal sign.
        "points" => correction.Points.ToString("0.##########", CultureInfo.InvariantCulture).Replace('.', separator == ',' ? '.' : ','),
        "reason" => correction.Reason,
        _ => "",
    };

    private static string Quoted(string field, char separator) =>
        field.AsSpan().IndexOfAny(separator, '"', '\n') < 0 ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
