using ClassKit.Content.Sources;

namespace ClassKit.Content.Outline;

/// <summary>One item of a list.</summary>
/// <param name="Text">Its text as one line.</param>
/// <param name="Quote">What is quoted below it with <c>&gt;</c>; empty if nothing is.</param>
internal sealed record ListEntry(Located Text, string Quote);
