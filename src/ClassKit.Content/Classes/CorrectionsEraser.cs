using System.Text;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Content.Classes;

/// <summary>Takes corrections out of an instructor's table and leaves every other byte as it is.</summary>
public static class CorrectionsEraser
{
    /// <summary>The table without the corrections of some answers.</summary>
    /// <param name="table">The bytes of a table that <see cref="CorrectionsReader"/> can read.</param>
    /// <param name="dealt">What was dealt to whom.</param>
    /// <param name="answers">The answers, by the ids of student, exercise and part: names, numbers and letters in the table are ways to say
    /// the same.</param>
    /// <returns>Null if there is no such correction, or if something is wrong with the table.</returns>
    public static byte[]? Without(byte[] table, DealtClass dealt, IReadOnlySet<(string Student, string Exercise, string Part)> answers)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(answers);
        var text = Encoding.UTF8.GetString(table);
        var plain = text.TrimStart('\uFEFF').ReplaceLineEndings("\n");
        var problems = new ProblemList("");
        var gone = CorrectionsReader
            .Lines(plain, dealt, problems)
            .Where(line => answers.Contains((line.Correction.Student, line.Correction.Exercise, line.Correction.Part)))
            .Select(line => line.Line)
            .ToHashSet();
        var records = CsvReader.Read(plain, CsvReader.SeparatorOf(plain), problems);
        return problems.IsEmpty && gone.Count > 0 && RawLines.Without(text, records, gone) is { } left
            ? Encoding.UTF8.GetBytes(left)
            : null;
    }
}
