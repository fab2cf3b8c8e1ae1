using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>An invented answer and what a grader ought to say of it.</summary>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Part">The part's id.</param>
/// <param name="Way">How it was answered.</param>
/// <param name="Content">A formula with its <c>=</c>, a text, a number (double), or null for nothing.</param>
/// <param name="Truth">The outcome that is right, known because the answer was made so.</param>
/// <param name="Misconception">The misconception acted out, or null.</param>
public sealed record RehearsedAnswer(string Exercise, string Part, AnswerWay Way, object? Content, Outcome Truth, string? Misconception);
