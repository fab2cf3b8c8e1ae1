namespace ClassKit.UseCases.Erasing;

/// <summary>Files that are looked through for a student: a folder's, or those in an archive.</summary>
internal interface ILookedThrough
{
    /// <summary>What is in a file; null for one that cannot be had, or is too large.</summary>
    byte[]? Bytes(string file);

    /// <summary>The files that lie in a folder, by the names that <see cref="Bytes"/> takes.</summary>
    IEnumerable<string> In(string folder);
}
