using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>What the instructor does and says at one moment of the class. When that is, the bench plan says.</summary>
/// <param name="Moment">When.</param>
/// <param name="FormulaId">The bread; empty unless <paramref name="Moment"/> is a step.</param>
/// <param name="StepName">The step of that bread; empty unless <paramref name="Moment"/> is a step.</param>
/// <param name="What">What happens.</param>
/// <param name="Say">What to say meanwhile; may be empty.</param>
public sealed record TalkingPoint(ClassMoment Moment, string FormulaId, string StepName, TextTemplate What, TextTemplate Say);
