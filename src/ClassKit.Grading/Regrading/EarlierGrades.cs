using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Regrading;

/// <summary>What an earlier grading put on record of a class.</summary>
/// <param name="Students">Every student, in its order.</param>
public sealed record EarlierGrades(IReadOnlyList<EarlierGrades.Student> Students)
{
    /// <summary>What decided the grades; null in records of earlier versions.</summary>
    public JudgeRecord? Judging { get; init; }

    /// <summary>When the work was due; null if it may come at any time.</summary>
    public DueMoment? Due { get; init; }

    /// <summary>One student's record.</summary>
    /// <param name="Id">The student's id.</param>
    /// <param name="Status">Whether there was anything to grade, in the words of <see cref="OutcomeWords"/>.</param>
    /// <param name="File">The file that was graded; null if none was.</param>
    /// <param name="Points">Earned in all.</param>
    /// <param name="OutOf">Possible in all.</param>
    /// <param name="Answers">Every answer.</param>
    public sealed record Student(string Id, string Status, string? File, decimal Points, decimal OutOf, IReadOnlyList<Answer> Answers)
    {
        /// <summary>That the work came late; null if it did not.</summary>
        public Late? Late { get; init; }
    }

    /// <summary>One answer's record.</summary>
    /// <param name="Exercise">The exercise's id.</param>
    /// <param name="Part">The part's id.</param>
    /// <param name="Outcome">What was said of it, in the words of <see cref="OutcomeWords"/>.</param>
    /// <param name="Points">Earned.</param>
    /// <param name="OutOf">Possible.</param>
    /// <param name="Expected">What the key gave.</param>
    /// <param name="Correction">The reason of the instructor's correction; null if there was none.</param>
    public sealed record Answer(string Exercise, string Part, string Outcome, decimal Points, decimal OutOf, double Expected, string? Correction)
    {
        /// <summary>The id of the misconception met, or null.</summary>
        public string? Misconception { get; init; }
    }
}
