namespace ClassKit.Exercises.Marking;

/// <summary>What an instructor decided on one answer, over whatever the grader says.</summary>
/// <param name="Student">The student's id.</param>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Part">The part's id.</param>
/// <param name="Points">The points that the answer has from now on: never a difference, so that applying it twice changes nothing.</param>
/// <param name="Reason">Why, in the words that student and instructor will read.</param>
public sealed record Correction(string Student, string Exercise, string Part, decimal Points, string Reason);
