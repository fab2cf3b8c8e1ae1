namespace ClassKit.Workbooks.Gradebooks;

/// <summary>A column of a list.</summary>
/// <param name="Head">The words at its head.</param>
/// <param name="Width">In characters.</param>
/// <param name="IsNumber">True if most of it are numbers.</param>
/// <param name="OnPaper">False for what formulas and readers need and no reader of paper; such columns stand last.</param>
internal sealed record ListColumn(string Head, double Width, bool IsNumber = false, bool OnPaper = true)
{
    /// <summary>False where words that are longer than the column stay on one line: what they are cut off of stands elsewhere.</summary>
    public bool BreaksLines { get; init; } = true;
}
