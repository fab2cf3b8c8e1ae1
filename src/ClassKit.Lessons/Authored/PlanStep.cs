namespace ClassKit.Lessons;

/// <summary>One stretch of the instructor's timing.</summary>
/// <param name="Minutes">How long it takes, above 0; starts where the one before ends.</param>
/// <param name="What">What happens.</param>
/// <param name="TalkingPoint">What to say meanwhile; may be empty.</param>
public sealed record PlanStep(int Minutes, string What, string TalkingPoint);
