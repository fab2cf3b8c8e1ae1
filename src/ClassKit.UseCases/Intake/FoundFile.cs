namespace ClassKit.UseCases.Intake;

/// <summary>Something that lies below a folder.</summary>
/// <param name="Path">Within that folder, with forward slashes.</param>
/// <param name="File">The file; null for what is not to be opened, or not by its name.</param>
/// <param name="Refused">What is said of what is not to be opened.</param>
internal sealed record FoundFile(string Path, FileInfo? File, ReturnedItem? Refused)
{
    /// <summary>Opens a file whose name is no text; null for all others.</summary>
    public Upload? ByBytes { get; init; }
}
