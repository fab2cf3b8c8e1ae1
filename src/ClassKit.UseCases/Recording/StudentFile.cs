using ClassKit.Exercises.Cohorts;
using ClassKit.Records.Arrangements;
using ClassKit.Records.Changes;
using ClassKit.Records.Classes;
using ClassKit.Records.Grades;
using ClassKit.Records.Gradings;
using ClassKit.Records.Marks;

namespace ClassKit.UseCases.Recording;

/// <summary>All that the record holds of one student.</summary>
/// <param name="Student">Who.</param>
/// <param name="Enrolments">Which classes, from when to when.</param>
/// <param name="Works">What was dealt to them and what came of it, in the order in which it went on record.</param>
/// <param name="Gradings">Their points by every grading, those that stand no longer too.</param>
/// <param name="Changes">What was changed of theirs, by whom, when and why.</param>
public sealed record StudentFile(
    Student Student,
    IReadOnlyList<Enrolment> Enrolments,
    IReadOnlyList<StudentWork> Works,
    IReadOnlyList<GradingOfStudent> Gradings,
    IReadOnlyList<LoggedChange> Changes
)
{
    /// <summary>What was ever arranged with them.</summary>
    public IReadOnlyList<RecordedArrangement> Arrangements { get; init; } = [];

    /// <summary>Marks that were typed.</summary>
    public IReadOnlyList<MarkOfStudent> Marks { get; init; } = [];

    /// <summary>What was seen of them at the bench.</summary>
    public IReadOnlyList<BenchOfStudent> Bench { get; init; } = [];

    /// <summary>Grades of terms as they were given out.</summary>
    public IReadOnlyList<GradeGivenOut> GivenOut { get; init; } = [];
}
