using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Marking;

namespace ClassKit.Exercises.Dealing;

/// <summary>Everything that was dealt to one class: all that grading needs besides the returned files.</summary>
/// <param name="Lesson">The lesson's id.</param>
/// <param name="LessonTitle">The lesson's title.</param>
/// <param name="Cohort">What the class is called; empty if no profile said so.</param>
/// <param name="Seed">The seed that all variants were drawn from.</param>
/// <param name="Marking">The marking scheme, frozen with the deal.</param>
/// <param name="Exercises">Every exercise that anyone was dealt, frozen with the deal, in workbook order. Its place among them is its
/// number for everyone.</param>
/// <param name="Students">What each student got, in roster order.</param>
public sealed record DealtClass(
    string Lesson,
    string LessonTitle,
    string Cohort,
    ulong Seed,
    MarkingScheme Marking,
    IReadOnlyList<Exercise> Exercises,
    IReadOnlyList<DealtStudent> Students
)
{
    /// <summary>Which deal this is; null for one made before deals had identities.</summary>
    public DealIdentity? Identity { get; init; }

    /// <summary>The deal that this one is sat again for; null for a first sitting.</summary>
    public DealIdentity? Replaces { get; init; }

    /// <summary>What it is for.</summary>
    public DealPurpose Purpose { get; init; }

    /// <summary>Where the class's clocks are set to; null if nobody has said.</summary>
    public ClassTimeZone? TimeZone { get; init; }

    /// <summary>What the class prints on; null if nobody has said.</summary>
    public Paper? Paper { get; init; }

    /// <summary>When it is due, as students were told; null if nobody told them.</summary>
    public DueMoment? Due { get; init; }

    /// <summary>How the exercises stand on their sheets.</summary>
    public PracticePlan Plan { get; init; } = PracticePlan.Usual;

    /// <summary>Where everything stands in the practice workbooks, worked out anew at every call.</summary>
    public PracticeLayout LayOut() => PracticeLayout.For(Exercises, Plan);

    /// <summary>When the work of one of the class is due: their own moment, where they have one.</summary>
    public DueMoment? DueFor(DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(student);
        return student.Due ?? Due;
    }

    /// <summary>True if every student was dealt every exercise.</summary>
    public bool IsSameForAll => Students.All(student => ExercisesOf(student).Count == Exercises.Count);

    /// <summary>
    /// True if there is one set for all, of which single students may leave something out, as arranged with them: nobody else's files say
    /// so.
    /// </summary>
    public bool HasOneSet =>
        Students.All(student => Exercises.All(exercise => student.Has(exercise.Id) || student.LeavesOut.Contains(exercise.Id)));

    /// <summary>What one of the class was dealt.</summary>
    /// <exception cref="InvalidOperationException">The student is not of the class.</exception>
    public DealtStudent SeatOf(Student student)
    {
        ArgumentNullException.ThrowIfNull(student);
        return Seats.Find(Students, student.Id) ?? throw new InvalidOperationException($"'{student.Id}' is not of the class.");
    }

    /// <summary>The exercises that one student was dealt, in workbook order.</summary>
    public IReadOnlyList<Exercise> ExercisesOf(DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(student);
        return [.. Exercises.Where(exercise => student.Has(exercise.Id))];
    }

    /// <summary>What some students were dealt who come one after another.</summary>
    public DealtClass Of(ClassPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.IsWhole ? this : this with { Students = part.Of(Students) };
    }
}
