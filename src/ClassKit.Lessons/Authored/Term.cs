using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>A word of the lesson's vocabulary.</summary>
/// <param name="Word">The term.</param>
/// <param name="Meaning">What it means, in one sentence.</param>
public sealed record Term(string Word, TextTemplate Meaning);
