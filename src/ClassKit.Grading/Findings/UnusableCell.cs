using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.Findings;

/// <summary>A cell that a formula uses and cannot use.</summary>
/// <param name="Cell">The cell within its sheet, such as <c>B8</c>.</param>
/// <param name="Kind">Why not.</param>
/// <param name="Text">The words that stand in it; null where none do.</param>
/// <param name="Beside">The cell with the number in the same row, where the words are its label; null where there is none.</param>
public sealed record UnusableCell(string Cell, UnusableCellKind Kind, Quotation? Text = null, string? Beside = null)
{
    internal UnusableCell Under(IDisguise disguise) => this with { Text = Text?.Under(disguise) };
}
