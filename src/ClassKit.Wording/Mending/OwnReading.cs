namespace ClassKit.Wording.Mending;

/// <summary>What to change in somebody's own formula.</summary>
/// <param name="Change">What is otherwise.</param>
/// <param name="Mended">The whole formula with that changed, which is the key by what it gives.</param>
/// <param name="Written">The piece that changes.</param>
/// <param name="Right">What it becomes.</param>
internal sealed record OwnReading(OwnChange Change, Flat Mended, Flat Written, Flat Right);
