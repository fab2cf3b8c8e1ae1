namespace ClassKit.Grading;

/// <summary>A returned file, where a sentence speaks of it.</summary>
/// <param name="Path">Its path within what was returned.</param>
public sealed record FileMention(string Path);
