namespace ClassKit.Records.Gradings;

/// <summary>A file that came back.</summary>
/// <param name="Student">Whose it is; null if nobody knows.</param>
/// <param name="Sha256">Its digest; null where it was not read.</param>
/// <param name="Entry">As in grades.json.</param>
public sealed record ReturnedEntry(string? Student, string? Sha256, string Entry);

/// <summary>Points typed into a gradebook.</summary>
/// <param name="Student">Whose they are.</param>
/// <param name="Entry">As in grades.json.</param>
public sealed record TypedEntry(string Student, string Entry);
