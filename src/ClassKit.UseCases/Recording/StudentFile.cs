using ClassKit.Exercises.Cohorts;
using ClassKit.Records.Arrangements;
using ClassKit.Records.Changes;
using ClassKit.Records.Classes;
using ClassKit.Records.Gradings;

namespace ClassKit.UseCases.Recording;

/// <summary>All that the record holds of one student.</summary>
/// <param name="Student">Who.</param>
/// <param name="Enrolments">Which classes, from when to when.</param>
/// <param name="Works">What was dealt to them and what came of it, in the order in which it went on record.</param>
/// <param name="Standing">Their points by the gradings that stand.</param>
/// <param name="Changes">What was changed of theirs, by whom, when and why.</param>
public sealed record StudentFile(Student Student, IReadOnlyList<Enrolment> Enrolments, IReadOnlyList<StudentWork> Works, IReadOnlyList<StandingGrade> Standing, IReadOnlyList<LoggedChange> Changes)
{
    /// <summary>What was ever arranged with them.</summary>
    public IReadOnlyList<RecordedArrangement> Arrangements { get; init; } = [];
}
