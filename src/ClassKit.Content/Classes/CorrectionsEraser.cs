using System.Text;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Content.Classes;

/// <summary>Takes a correction out of an instructor's table and leaves every other byte as it is.</summary>
public static class CorrectionsEraser
{
    /// <summary>The table without the correction of one answer.</summary>
    /// <param name="table">The bytes of a table that <see cref="CorrectionsReader"/> can read.</param>
    /// <param name="dealt">What was dealt to whom.</param>
    /// <param name="student">The student's id.</param>
    /// <param name="exercise">The exercise's id.</param>
    /// <param name="part">The part's id.</param>
    /// <returns>Null if there is no such correction.</returns>
    public static byte[]? Without(byte[] table, DealtClass dealt, string student, string exercise, string part)
    {
        ArgumentNullException.ThrowIfNull(table);
        var text = Encoding.UTF8.GetString(table);
        var lines = RawLines.Of(text);
        var plain = text.TrimStart('\uFEFF').ReplaceLineEndings("\n");
        var records = CsvReader.Read(plain, CsvReader.SeparatorOf(plain), new ProblemList(""));
        foreach (var (at, record) in records.Index().Skip(1))
        {
            if (record.IsBlank || record.Fields[0].StartsWith('#')) continue;
            var end = at + 1 < records.Count ? records[at + 1].Line : lines.Count + 1;
            var without = string.Concat(lines.Where((_, line) => line + 1 < record.Line || line + 1 >= end));
            if (Names(table, dealt).Count - Names(Encoding.UTF8.GetBytes(without), dealt).Count == 1 && !Names(Encoding.UTF8.GetBytes(without), dealt).Contains((student, exercise, part)) && Names(table, dealt).Contains((student, exercise, part)))
                return Encoding.UTF8.GetBytes(without);
        }
        return null;
    }

    /// <summary>Whose answers a table corrects, as its reader understands it: names, numbers and letters are ways to say the same.</summary>
    private static HashSet<(string, string, string)> Names(byte[] table, DealtClass dealt) =>
        [.. (CorrectionsReader.Read(new Library(new OneFile(table)).At(CorrectionsReader.FileName), dealt).Model ?? []).Select(correction => (correction.Student, correction.Exercise, correction.Part))];

    private sealed class OneFile(byte[] content) : ISourceTree
    {
        public SourceKind At(string path) => SourceKind.File;

        public IReadOnlyList<string> Files(string folder) => [];

        public IReadOnlyList<string> Folders(string folder) => [];

        public Stream Open(string path) => new MemoryStream(content, writable: false);

        public string Full(string path) => path;
    }
}
