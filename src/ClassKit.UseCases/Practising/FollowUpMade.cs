using ClassKit.Exercises.Dealing;
using ClassKit.Grading.FollowUps;

namespace ClassKit.UseCases.Practising;

/// <summary>Practice after grading was made.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Dealt">Whose numbers are which, of those who practise.</param>
/// <param name="Chosen">What each of the students asked about practises, and why, by id; nothing for who missed nothing or was not
/// graded.</param>
public sealed record FollowUpMade(
    FollowUpRequest Request,
    DealtClass Dealt,
    IReadOnlyDictionary<string, IReadOnlyList<FollowUpExercise>> Chosen
);
