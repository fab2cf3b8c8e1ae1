namespace ClassKit.UseCases.Intake;

/// <summary>Something that lies below a folder.</summary>
/// <param name="Path">Within that folder, with forward slashes.</param>
/// <param name="File">The file; null for what is not to be opened.</param>
/// <param name="Refused">What is said of it then.</param>
internal sealed record FoundFile(string Path, FileInfo? File, ReturnedItem? Refused);
