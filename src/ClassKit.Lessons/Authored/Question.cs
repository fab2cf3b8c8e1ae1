using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>A discussion question.</summary>
/// <param name="Ask">The question.</param>
/// <param name="ModelAnswer">What a good answer says; for the instructor only.</param>
public sealed record Question(TextTemplate Ask, TextTemplate ModelAnswer);
