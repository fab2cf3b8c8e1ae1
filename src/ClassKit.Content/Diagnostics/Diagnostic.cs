namespace ClassKit.Content.Diagnostics;

/// <summary>Something wrong with authored content or input, with its place and the way out.</summary>
/// <param name="File">The file, as the user named it or below what the user named.</param>
/// <param name="Line">Counted from 1; null where the whole file is meant.</param>
/// <param name="Found">What is there.</param>
/// <param name="Expected">What should be there, and what to do.</param>
public sealed record Diagnostic(string File, int? Line, string Found, string Expected)
{
    /// <summary>What is there, without the full stop of a sentence: one follows it.</summary>
    public string Found { get; init; } = Found is [.., not '.', '.'] ? Found[..^1] : Found;

    /// <summary>How much it stands in the way.</summary>
    public Weight Weight { get; init; }

    /// <summary>What each front asks for in its own way; null where the words say all.</summary>
    public Remedy? Remedy { get; init; }

    /// <summary>One line: <c>file:line: found; expected</c>.</summary>
    public override string ToString() => Line is { } line ? $"{File}:{line}: {Found}. {Expected}" : $"{File}: {Found}. {Expected}";
}
