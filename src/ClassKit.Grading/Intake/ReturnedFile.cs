using ClassKit.CellFormulas;

namespace ClassKit.Grading;

/// <summary>One file of the returned folder, read or refused.</summary>
/// <param name="Path">Within the returned folder, with forward slashes.</param>
/// <param name="Workbook">Its cells; null if it was refused.</param>
/// <param name="Refusal">Why it could not be read, in words that can be forwarded to the student; null if it was.</param>
public sealed record ReturnedFile(string Path, WorkbookSnapshot? Workbook, string? Refusal)
{
    /// <summary>The file's name without folder and ending.</summary>
    public string Stem => System.IO.Path.GetFileNameWithoutExtension(Path);
}
