using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Purchasing;

/// <summary>What one formula takes of an ingredient, over all teams.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Mass">How much.</param>
public sealed record RequisitionUse(LessonFormula Formula, Mass Mass);
