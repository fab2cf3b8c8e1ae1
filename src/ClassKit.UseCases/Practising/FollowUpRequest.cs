using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;

namespace ClassKit.UseCases.Practising;

/// <summary>What practice after grading takes.</summary>
/// <param name="Before">What was dealt.</param>
/// <param name="Grades">How it was graded.</param>
/// <param name="Wish">For whom, and how much.</param>
public sealed record FollowUpRequest(DealtClass Before, ClassGrades Grades, FollowUpWish Wish)
{
    /// <summary>Exercises to draw from besides those dealt.</summary>
    public IReadOnlyList<Exercise> Pool { get; init; } = [];

    /// <summary>Practice that is never replaced by other practice.</summary>
    public EarlierDeal Earlier { get; init; } = EarlierDeal.None;

    /// <summary>How messages name where what was dealt was read.</summary>
    public string Source { get; init; } = Before.Lesson;
}
