namespace ClassKit.Lessons.Authored;

/// <summary>A step of a bread of the lesson, by names.</summary>
/// <param name="FormulaId">The bread.</param>
/// <param name="StepName">The step of it.</param>
public sealed record LessonStep(string FormulaId, string StepName);
