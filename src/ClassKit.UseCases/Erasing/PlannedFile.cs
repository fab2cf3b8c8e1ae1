namespace ClassKit.UseCases.Erasing;

/// <summary>A file that is to be written, worked out from what it was when it was looked at.</summary>
/// <param name="File">The file, in full.</param>
/// <param name="Before">Its stamp before it was read.</param>
/// <param name="Left">What is to take its place.</param>
internal sealed record PlannedFile(string File, FileStamp Before, byte[] Left)
{
    /// <exception cref="IOException">Somebody has changed it since: what was worked out then would take their change away.</exception>
    public void MustBeAsItWas()
    {
        if (FileStamp.Of(File) != Before)
            throw new IOException($"{File} was changed meanwhile");
    }
}
