namespace ClassKit.UseCases.Output.Writing;

/// <summary>One file that ClassKit wrote.</summary>
/// <param name="Path">Within the folder, with forward slashes.</param>
/// <param name="Digest">Of what was written; null in lists of the first version.</param>
internal sealed record OwnFile(string Path, string? Digest);
