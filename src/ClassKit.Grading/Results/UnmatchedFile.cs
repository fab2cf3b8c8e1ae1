namespace ClassKit.Grading;

/// <summary>A returned file that counts for no student.</summary>
/// <param name="File">Its path within the returned folder.</param>
/// <param name="Reason">Why, and what to do about it.</param>
public sealed record UnmatchedFile(string File, string Reason);
