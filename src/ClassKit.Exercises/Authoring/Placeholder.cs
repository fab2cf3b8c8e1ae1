namespace ClassKit.Exercises.Authoring;

/// <summary>A place in a text into which a value is put.</summary>
/// <param name="Written">As it stands there, with its braces: <c>{height}</c>.</param>
/// <param name="Name">What it stands for: <c>popovers.height</c>.</param>
/// <param name="Line">The line where it stands, from 1: of its file, or of the text itself where that is from no file.</param>
public sealed record Placeholder(string Written, string Name, int Line);
