using ClassKit.Lessons.Authored;

namespace ClassKit.UseCases.Exporting;

/// <summary>What an item bank takes.</summary>
/// <param name="Lesson">Whose exercises become items.</param>
/// <param name="Variants">How many variants of each exercise, 1 to 999.</param>
/// <param name="AsTemplates">True for items whose numbers the delivering program draws.</param>
/// <param name="Seed">Decides the draws.</param>
public sealed record ItemBankRequest(Lesson Lesson, int Variants, bool AsTemplates, ulong Seed);
