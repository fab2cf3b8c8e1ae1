namespace ClassKit.UseCases;

/// <summary>The shape of grades.json, as it stands in the file.</summary>
internal sealed record GradesDocument(IReadOnlyList<GradesDocument.StudentEntry> Students, IReadOnlyList<GradesDocument.UnmatchedEntry> Unmatched)
{
    internal sealed record StudentEntry(
        string Id,
        string Name,
        string Status,
        string? File,
        double Points,
        double OutOf,
        IReadOnlyList<AnswerEntry> Answers,
        IReadOnlyList<FlagEntry> Flags);

    /// <param name="Exercise">The exercise's id.</param>
    /// <param name="Part">The part's id.</param>
    /// <param name="Outcome">One of the words of the contract.</param>
    /// <param name="Points">Earned.</param>
    /// <param name="OutOf">Possible.</param>
    /// <param name="Value">A number, a text, true or false; null for a blank.</param>
    /// <param name="Expected">What the key gives.</param>
    /// <param name="Formula">With its leading <c>=</c>; null for a typed value.</param>
    /// <param name="Misconception">The id of the misconception met, or null.</param>
    /// <param name="Note">To the student.</param>
    internal sealed record AnswerEntry(
        string Exercise,
        string Part,
        string Outcome,
        double Points,
        double OutOf,
        object? Value,
        double Expected,
        string? Formula,
        string? Misconception,
        string Note);

    internal sealed record FlagEntry(string Code, string Message);

    internal sealed record UnmatchedEntry(string File, string Reason);
}
