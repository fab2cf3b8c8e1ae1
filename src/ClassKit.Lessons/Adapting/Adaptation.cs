using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Adapting;

/// <summary>Something of a formula that is other for this class than it was written.</summary>
/// <param name="Bread">The formula as it is now.</param>
/// <param name="What">What was changed, or what to mind: whole sentences.</param>
/// <param name="Source">Where that is published; empty where nothing is.</param>
public sealed record Adaptation(LessonFormula Bread, string What, string Source);
