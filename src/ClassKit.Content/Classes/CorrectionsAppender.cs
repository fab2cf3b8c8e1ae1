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
    /// <param name="table">The bytes of the table as it is, which <see cref="CorrectionsReader"/> could read; null if there is none
    /// yet.</param>
    /// <param name="corrections">In order.</param>
    public static byte[] Lines(byte[]? table, IReadOnlyList<Correction> corrections)
    {
        ArgumentNullException.ThrowIfNull(corrections);
        var text = Encoding.UTF8.GetString(table ?? []).TrimStart('\uFEFF');
        var plain = text.ReplaceLineEndings("\n");
        var shape = CsvShape.Of(text);
        var head = CsvReader
            .Read(plain, shape.Separator, new ProblemList(""))
            .FirstOrDefault(record => !record.IsBlank)
            ?.Fields.Select(field => field.Trim().ToLowerInvariant())
            .ToList();

        var added = new StringBuilder();
        if (plain.Length > 0 && !plain.EndsWith('\n'))
            added.Append(shape.End);
        if (head is null)
            added.Append(shape.Line(CorrectionsReader.Columns));
        foreach (var correction in corrections)
            added.Append(shape.Line((head ?? [.. CorrectionsReader.Columns]).Select(column => Field(correction, column, shape.Separator))));
        return Encoding.UTF8.GetBytes(added.ToString());
    }

    private static string Field(Correction correction, string column, char separator) =>
        column switch
        {
            "student" => correction.Student,
            "part" => $"{correction.Exercise}.{correction.Part}",

            // Where fields are kept apart by something else than the comma, the comma is the decimal sign.
            "points" => correction.Points.ToString("0.##########", CultureInfo.InvariantCulture).Replace('.', separator == ',' ? '.' : ','),
            "reason" => correction.Reason,
            _ => "",
        };
}
