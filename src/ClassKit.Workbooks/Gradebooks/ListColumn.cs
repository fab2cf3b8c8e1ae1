namespace ClassKit.Workbooks.Gradebooks;

/// <summary>A column of a list.</summary>
/// <param name="Head">The words at its head.</param>
/// <param name="Width">In characters.</param>
/// <param name="IsNumber">True if most of it are numbers.</param>
internal sealed record ListColumn(string Head, double Width, bool IsNumber = false);
