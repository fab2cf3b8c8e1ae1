using ClassKit.Exercises.Dealing;

namespace ClassKit.Grading.Intake;

/// <summary>Whose workbook a returned file is, and how that is known.</summary>
/// <param name="Student">The student whom the workbook was dealt to; null if it was dealt to nobody in this class.</param>
/// <param name="How">What told.</param>
internal sealed record Owner(DealtStudent? Student, OwnerEvidence How);
