using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Marking;

namespace ClassKit.Grading.Results;

/// <summary>Points that an instructor typed into a gradebook over those that were graded.</summary>
/// <param name="Cell">Where, with the sheet.</param>
/// <param name="Student">Whose answer.</param>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Part">The part's id.</param>
/// <param name="Before">What was graded; null where that was left to the instructor, or nothing was returned.</param>
/// <param name="Typed">What stands in the cell now.</param>
/// <param name="Points">What the answer is to have; null if that cannot be taken from what was typed.</param>
public sealed record TypedPoints(string Cell, Student Student, string Exercise, string Part, decimal? Before, string Typed, decimal? Points)
{
    /// <summary>The gradebook's file name.</summary>
    public string File { get; init; } = "";

    /// <summary>Why it cannot be taken over as it stands; null if it can.</summary>
    public TypedPointsFault? Fault { get; init; }

    /// <summary>The part as corrections and the columns of grades.csv name it.</summary>
    public string Asked => $"{Exercise}.{Part}";

    /// <summary>The correction that it is to become.</summary>
    /// <param name="reason">What the student reads, since a correction gives a reason.</param>
    /// <exception cref="InvalidOperationException">It cannot be taken over.</exception>
    public Correction ToCorrection(string reason) =>
        new(Student.Id, Exercise, Part, Points ?? throw new InvalidOperationException($"{Cell} holds no points."), reason);
}
