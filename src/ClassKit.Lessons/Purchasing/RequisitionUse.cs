using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Purchasing;

/// <summary>What one formula takes of an ingredient, over all teams.</summary>
/// <param name="Bread">The formula.</param>
/// <param name="Mass">How much.</param>
public sealed record RequisitionUse(LessonFormula Bread, Mass Mass);
