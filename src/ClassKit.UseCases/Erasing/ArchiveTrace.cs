namespace ClassKit.UseCases.Erasing;

/// <summary>What an archive holds of a student.</summary>
/// <param name="Left">The archive without what is the student's; null where nothing of it is, or where it cannot be written so.</param>
/// <param name="Files">How many files of the student's alone it holds.</param>
/// <param name="Tables">How many tables with rows of the student's it holds.</param>
/// <param name="Still">Files in it that name the student in other places too; these stay.</param>
/// <param name="Unread">Files in it that could not be looked into.</param>
internal sealed record ArchiveTrace(byte[]? Left, int Files, int Tables, IReadOnlyList<string> Still, IReadOnlyList<string> Unread)
{
    /// <summary>True of an archive that names the student.</summary>
    public bool IsNamed => Files + Tables + Still.Count > 0;
}
