using ClassKit.Exercises.Dealing;
using ClassKit.Grading.OnPaper;

namespace ClassKit.UseCases.Papers;

/// <summary>What a workbook for answers on paper is made of.</summary>
/// <param name="Dealt">What was dealt to whom.</param>
public sealed record PaperSheetRequest(DealtClass Dealt)
{
    /// <summary>What was typed before, and stands in its cells; nothing where nobody typed any.</summary>
    public PaperReading Typed { get; init; } = PaperReading.Nothing;
}
