namespace ClassKit.Notes;

/// <summary>A file of a teaching folder that names a student who is erased, and what becomes of it.</summary>
/// <param name="File">Its path below the folder, with forward slashes.</param>
public abstract record StudentTrace(string File)
{
    /// <summary>It is the student's alone, made for them or come from them: it goes.</summary>
    /// <param name="File">Its path below the folder, with forward slashes.</param>
    public sealed record Theirs(string File) : StudentTrace(File);

    /// <summary>Rows of it are the student's: they go, and nothing else of it is touched.</summary>
    /// <param name="File">Its path below the folder, with forward slashes.</param>
    /// <param name="Count">How many.</param>
    public sealed record Rows(string File, int Count) : StudentTrace(File);

    /// <summary>
    /// It is an archive, and what is the student's in it goes: files of theirs alone, rows of tables. Every other file in it is as it was.
    /// </summary>
    /// <param name="File">Its path below the folder, with forward slashes.</param>
    /// <param name="Files">How many files of the student's alone.</param>
    /// <param name="Tables">How many tables with rows of the student's.</param>
    public sealed record Packed(string File, int Files, int Tables) : StudentTrace(File);

    /// <summary>It was made of the whole class, and is made anew without the student.</summary>
    /// <param name="File">Its path below the folder, with forward slashes.</param>
    public sealed record Anew(string File) : StudentTrace(File);

    /// <summary>It was made of the whole class and stays until it is made again.</summary>
    /// <param name="File">Its path below the folder, with forward slashes.</param>
    /// <param name="Kind">What made it.</param>
    public sealed record MadeOfAll(string File, string Kind) : StudentTrace(File);

    /// <summary>It stays: whoever wrote it decides what becomes of it.</summary>
    /// <param name="File">Its path below the folder, with forward slashes.</param>
    /// <param name="Lines">The lines that name the student; none where the name stands elsewhere, as in the file's own.</param>
    public sealed record Stays(string File, IReadOnlyList<int> Lines) : StudentTrace(File)
    {
        /// <summary>True where cells of a workbook name the student.</summary>
        public bool IsInCells { get; init; }

        /// <summary>The files in an archive that name the student; none of other files.</summary>
        public IReadOnlyList<string> Inside { get; init; } = [];
    }

    /// <summary>It is a record that another folder keeps, or a copy of one, and names the student: it is erased from there.</summary>
    /// <param name="File">Its path below the folder, with forward slashes.</param>
    public sealed record OtherRecord(string File) : StudentTrace(File);

    /// <summary>
    /// Nobody knows whether it names the student: it is damaged, too large, held by another program or behind a password.
    /// </summary>
    /// <param name="File">Its path below the folder, with forward slashes.</param>
    /// <param name="Inside">The files in an archive of which that is so; none where it is so of the whole file.</param>
    public sealed record Unread(string File, IReadOnlyList<string> Inside) : StudentTrace(File);
}
