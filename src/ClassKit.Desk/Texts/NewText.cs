namespace ClassKit.Desk.Texts;

/// <summary>What is to be in a file of the instructor's own.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Before">The file as the new text was worked out from it; null if it could not be read.</param>
/// <param name="Text">The new text.</param>
public sealed record NewText(string Path, OwnText? Before, string Text);
