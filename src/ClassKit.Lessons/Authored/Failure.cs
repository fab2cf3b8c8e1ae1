using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>A common failure.</summary>
/// <param name="Sign">What one sees.</param>
/// <param name="Cause">Why.</param>
/// <param name="Cure">What to do next time.</param>
public sealed record Failure(TextTemplate Sign, TextTemplate Cause, TextTemplate Cure);
