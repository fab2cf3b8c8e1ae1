namespace ClassKit.Grading.Findings.Quoting;

/// <summary>A piece of a text.</summary>
/// <param name="Text">What it says.</param>
/// <param name="IsTyped">True if a student typed it.</param>
public readonly record struct TextPiece(string Text, bool IsTyped);
