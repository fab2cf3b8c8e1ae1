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
    public sealed record Stays(string File, IReadOnlyList<int> Lines) : StudentTrace(File);
}
