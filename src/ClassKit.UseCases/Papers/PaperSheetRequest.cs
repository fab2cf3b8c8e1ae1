using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Papers;

/// <summary>What a workbook for answers on paper is made of.</summary>
/// <param name="Dealt">What was dealt to whom.</param>
public sealed record PaperSheetRequest(DealtClass Dealt);
