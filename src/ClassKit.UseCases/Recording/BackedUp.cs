namespace ClassKit.UseCases.Recording;

/// <summary>A copy of the record.</summary>
/// <param name="Path">Where it lies.</param>
public sealed record BackedUp(string Path);
