using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>What one formula takes of an ingredient, over all teams.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Mass">How much.</param>
public sealed record RequisitionUse(LessonFormula Formula, Mass Mass);
