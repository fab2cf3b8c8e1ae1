namespace ClassKit.Grading.Findings.Quoting;

/// <summary>A returned file, where a fact speaks of it.</summary>
/// <param name="Path">Its path within what was returned: a name that a student chose.</param>
public sealed record ReturnedName(string Path)
{
    internal ReturnedName Under(IDisguise disguise) => new(disguise.OfFile(Path));
}
