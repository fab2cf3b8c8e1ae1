using ClassKit.Content.Recognition;

namespace ClassKit.Content.Checking;

/// <summary>One thing that was checked.</summary>
/// <param name="Path">Where it is, as the user named it or below what the user named.</param>
/// <param name="Kind">What it was taken for.</param>
public sealed record CheckedItem(string Path, ContentKind Kind);
