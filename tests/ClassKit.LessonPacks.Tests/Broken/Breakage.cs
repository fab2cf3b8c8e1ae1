namespace ClassKit.LessonPacks.Tests.Broken;

/// <summary>One thing in one file of a lesson changed for the worse.</summary>
/// <param name="File">Below the lesson's folder.</param>
/// <param name="Find">What stands there.</param>
/// <param name="Put">What stands there afterwards.</param>
/// <param name="At">Text in the line that must be blamed; a number for that line; null where any line will do.</param>
/// <param name="Says">Words that a message must hold.</param>
/// <param name="Blamed">The end of the path that must be blamed; <paramref name="File"/> if null.</param>
public sealed record Breakage(string File, string Find, string Put, string? At, string Says, string? Blamed = null)
{
    public override string ToString() => $"{File}: {Put.ReplaceLineEndings("⏎")}";
}
