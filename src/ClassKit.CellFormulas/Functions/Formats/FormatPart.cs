namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>One piece of a section of a number format.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">The literal text, or the letters of a date part.</param>
internal readonly record struct FormatPart(FormatPartKind Kind, string Text);
