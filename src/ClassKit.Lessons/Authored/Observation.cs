using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>Something to measure, and what to ask when it differs from what was predicted.</summary>
/// <param name="Measure">What.</param>
/// <param name="IfLess">The question when less was measured.</param>
/// <param name="IfMore">The question when more was measured.</param>
public sealed record Observation(Measure Measure, TextTemplate IfLess, TextTemplate IfMore);
