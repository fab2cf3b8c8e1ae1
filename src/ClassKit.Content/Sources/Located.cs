namespace ClassKit.Content.Sources;

/// <summary>A piece of text and the line it stands on, counted from 1.</summary>
internal readonly record struct Located(string Text, int Line);
