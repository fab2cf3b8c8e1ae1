using ClassKit.CellFormulas.Sheets;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Grading.Intake;

/// <summary>One file that came back, read or refused.</summary>
/// <param name="Path">Within what was returned, with forward slashes; through archives as through folders.</param>
/// <param name="Workbook">Its cells; null if it was refused.</param>
/// <param name="Refusal">Why it could not be read; null if it was.</param>
public sealed record ReturnedFile(string Path, WorkbookSnapshot? Workbook, Refusal? Refusal)
{
    /// <summary>The SHA-256 of its bytes in lower-case hexadecimal; null if they were not read.</summary>
    public string? Digest { get; init; }

    /// <summary>
    /// When it was changed last by what stands inside: in universal time, or of a kind that is not specified where it names no zone, or one
    /// that its program is known to write in front of local time; null if it does not say.
    /// </summary>
    public DateTime? Modified { get; init; }

    /// <summary>When it was changed last by the folder or archive that it came in; null if that does not say.</summary>
    public DateTime? Dated { get; init; }

    /// <summary>Who saved it last, as it says itself; null if it does not say.</summary>
    public string? SavedBy { get; init; }

    /// <summary>What went wrong in our own program, for those who mend it; null if nothing did.</summary>
    public string? Fault { get; init; }
}
